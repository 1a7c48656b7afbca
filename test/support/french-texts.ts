import ts from 'typescript';
import { sourceFiles } from './source-tree';

export interface FrenchText {
  readonly file: string;
  readonly text: string;
}

/** What stands in a wording for a value; it is a word to whatever sign follows. */
const VALUE = '{}';

const textOf = (node: ts.Node): string | undefined => {
  if (ts.isStringLiteralLike(node)) return node.text;
  if (!ts.isTemplateExpression(node)) return undefined;
  return node.templateSpans.reduce(
    (text, span) => text + VALUE + span.literal.text,
    node.head.text,
  );
};

/** All texts in a part of a source file, the keys of objects left out. */
const textsIn = (node: ts.Node): string[] => {
  const own = textOf(node);
  if (own !== undefined) return [own];
  const texts: string[] = [];
  node.forEachChild((child) => {
    const isKey = ts.isPropertyAssignment(node) && child === node.name;
    if (!isKey) texts.push(...textsIn(child));
  });
  return texts;
};

/** The French of a pair in a web catalogue, and of an object that words a paper in two languages. */
const frenchIn = (node: ts.Node): ts.Node | undefined => {
  if (ts.isArrayLiteralExpression(node) && node.elements.length === 2) {
    const [en, fr] = node.elements;
    const pair = en !== undefined && fr !== undefined && textOf(en) !== undefined;
    return pair && textOf(fr) !== undefined ? fr : undefined;
  }
  return ts.isPropertyAssignment(node) && node.name.getText() === 'fr'
    ? node.initializer
    : undefined;
};

const frenchOf = (path: string, source: string): FrenchText[] => {
  const found: FrenchText[] = [];
  const visit = (node: ts.Node): void => {
    const french = frenchIn(node);
    if (french === undefined) node.forEachChild(visit);
    else found.push(...textsIn(french).map((text) => ({ file: path, text })));
  };
  visit(ts.createSourceFile(path, source, ts.ScriptTarget.Latest, true));
  return found;
};

/** Every French text of the screens, by its catalogue. */
export const frenchOfScreens = (): FrenchText[] =>
  sourceFiles(['apps/web/src'], /\.tsx?$/)
    .filter(({ text }) => text.includes('catalogue('))
    .flatMap(({ path, text }) => frenchOf(path, text));

/** Every French text of the papers and of what else is worded beside its English. */
export const frenchOfPapers = (): FrenchText[] =>
  sourceFiles(['apps/api/src/documents', 'apps/api/src/modules'], /(?<!\.spec)\.ts$/).flatMap(
    ({ path, text }) => frenchOf(path, text),
  );

/**
 * French sets a colon, a semicolon, a question mark, an exclamation mark, a per cent sign and the
 * inside of its quotation marks off, by a space at which no line may break.
 */
export const breaksFrenchSpacing = (text: string): boolean =>
  /[ \t\n][:;?!»%]|«[ \t\n]/.test(text) ||
  /[\p{L}\p{N})}\]’”…][;?!»%]/u.test(text) ||
  /[\p{L}\p{N})}\]’”…]:(?:\s|$)/u.test(text) ||
  /«[^\u00a0\u202f]/.test(text);
