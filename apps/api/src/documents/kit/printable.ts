import { refuse, ok, type Result } from '../../domain/refusals';
import type { PrintingRefusal } from '../../domain/printing';
import { hasGlyph, type Face } from './fonts';
import { memo } from './memo';
import { say } from '../../domain/words/say';

/**
 * Scripts that run from right to left or whose letters join and reorder. Setting them letter by
 * letter would print a wrong text, so they are refused even where the font has the letters.
 */
const NOT_SET_HERE =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Devanagari}\p{Script=Bengali}\p{Script=Thai}\p{Script=Khmer}\p{Script=Tamil}]/u;

/** Printed where a sign can't be: on papers only, never on a label. */
const SUBSTITUTE = '\u25A1';

const settable = memo<boolean>(5000);
const isSettable = (sign: string): boolean => settable(sign, () => canBeSet(sign));

const canBeSet = (sign: string): boolean => {
  const codePoint = sign.codePointAt(0) ?? 0;
  if (/[\p{Cc}\p{Cf}\p{Co}\p{Cs}]/u.test(sign) || NOT_SET_HERE.test(sign)) return false;
  return hasGlyph('regular', codePoint) || hasGlyph('signs', codePoint);
};

/** As a line is set: composed letters, every white space but the line break a plain space. */
export const normaliseText = (text: string): string =>
  text
    .normalize('NFC')
    .replaceAll(/\r\n?/g, '\n')
    .replaceAll(/[\t\v\f ]+/g, ' ')
    .replaceAll('\u00AD', '');

const missing = memo<readonly string[]>(5000);

/** Signs of a text that can't be set, each once. */
const missingSigns = (text: string): readonly string[] =>
  missing(text, () => [
    ...new Set([...normaliseText(text)].filter((sign) => sign !== '\n' && !isSettable(sign))),
  ]);

/** For a label: a text that can't be printed as it is written is refused, never mended. */
export const checkPrintable = (texts: readonly string[]): Result<true, PrintingRefusal> => {
  for (const text of texts) {
    const signs = missingSigns(text);
    if (signs.length === 0) continue;
    const shown = signs.slice(0, 8).map((sign) => {
      const hex = (sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
      return `${/\p{C}/u.test(sign) ? '' : `${sign} `}U+${hex}`;
    });
    return refuse({
      code: 'text-not-printable',
      detail: say`“${text.slice(0, 60)}” has signs that can't be printed here: ${shown.join(', ')}. Write it in letters of the Latin, Greek or Cyrillic alphabets.`,
      facts: { text: text.slice(0, 500), signs: shown },
    });
  }
  return ok(true);
};

/** For a paper that must come out in any case (a recall list): signs that can't be printed stand as □. */
export const substituteSigns = (text: string): string =>
  [...normaliseText(text)]
    .map((sign) => (sign === '\n' || isSettable(sign) ? sign : SUBSTITUTE))
    .join('');

/** Which face sets a sign; a sign that no font has is set, as an empty box, in the text face. */
export const faceOf = (sign: string, bold: boolean): Face =>
  faces(`${sign}${String(bold)}`, () => findFace(sign, bold));

const faces = memo<Face>(5000);

const findFace = (sign: string, bold: boolean): Face => {
  const codePoint = sign.codePointAt(0) ?? 0;
  const text = bold ? 'bold' : 'regular';
  if (hasGlyph(text, codePoint)) return text;
  const signs = bold ? 'signsBold' : 'signs';
  if (hasGlyph(signs, codePoint)) return signs;
  return hasGlyph('signs', codePoint) ? 'signs' : text;
};
