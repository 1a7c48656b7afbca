import { readFileSync } from 'node:fs';
import ts from 'typescript';

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
export const saidIn = (file: string): SaidTemplate[] => {
  const source = ts.createSourceFile(
    file,
    readFileSync(file, 'utf8'),
    ts.ScriptTarget.Latest,
    true,
  );
  const found: SaidTemplate[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTaggedTemplateExpression(node) && node.tag.getText() === 'say') {
      found.push({ file, english: wordingOf(node.template) });
    }
    if (ts.isCallExpression(node)) {
      const place = WORD_ARGUMENTS[node.expression.getText()];
      const words = place === undefined ? [] : literalsIn(node.arguments[place]);
      found.push(...words.map((english) => ({ file, english })));
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};
