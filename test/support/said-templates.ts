import ts from 'typescript';
import type { SourceFile } from './source-tree';

export interface SaidTemplate {
  readonly file: string;
  readonly english: string;
}

/** Calls whose argument is a word of a sentence, and which argument it is. */
const WORD_ARGUMENTS: Readonly<Record<string, number>> = {
  named: 0,
  orNotFound: 1,
  refuseIfStale: 0,
};

const wordingOf = (template: ts.TemplateLiteral): string =>
  ts.isNoSubstitutionTemplateLiteral(template)
    ? template.text
    : template.templateSpans.reduce(
        (wording, span, place) => `${wording}{${place}}${span.literal.text}`,
        template.head.text,
      );

const literalsIn = (node: ts.Expression | undefined): string[] => {
  if (node === undefined) return [];
  if (ts.isStringLiteral(node)) return [node.text];
  return ts.isConditionalExpression(node)
    ? [...literalsIn(node.whenTrue), ...literalsIn(node.whenFalse)]
    : [];
};

/** Every sentence and word that a source file says, by its English wording. */
export const saidIn = ({ path: file, text }: SourceFile): SaidTemplate[] => {
  const namesWords = /import \{[^}]*\bnamed\b[^}]*\} from '[^']*\/say'/.test(text);
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: SaidTemplate[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTaggedTemplateExpression(node) && node.tag.getText() === 'say') {
      found.push({ file, english: wordingOf(node.template) });
    }
    if (ts.isCallExpression(node)) {
      const called = node.expression.getText();
      const place = called === 'named' && !namesWords ? undefined : WORD_ARGUMENTS[called];
      const words = place === undefined ? [] : literalsIn(node.arguments[place]);
      found.push(...words.map((english) => ({ file, english })));
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};
