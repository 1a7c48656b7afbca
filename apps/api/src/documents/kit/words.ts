import { ptToMm, widthRatio, type Face } from './fonts';
import { memo } from './memo';
import { faceOf, normaliseText } from './printable';

/** A stretch of text with one look. */
export interface Run {
  readonly text: string;
  readonly strong?: boolean;
}

export type Words = string | readonly Run[];

export interface Piece {
  readonly text: string;
  readonly face: Face;
}

/** A word with no place to break in it: it may change its face on the way. */
export interface Word {
  readonly pieces: readonly Piece[];
  readonly widthMm: number;
  readonly spaceBefore: Piece | undefined;
  readonly newLine: boolean;
}

export const asRuns = (words: Words): readonly Run[] =>
  typeof words === 'string' ? [{ text: words }] : words;

export const plainText = (words: Words): string =>
  asRuns(words)
    .map((run) => run.text)
    .join('');

export const pieceWidth = ({ text, face }: Piece, sizePt: number): number =>
  ptToMm(widthRatio(face, text) * sizePt);

const inFaces = (run: Run): Piece[] => {
  const pieces: Piece[] = [];
  for (const sign of normaliseText(run.text)) {
    const face = faceOf(sign, run.strong ?? false);
    const last = pieces[pieces.length - 1];
    if (last?.face === face) pieces[pieces.length - 1] = { text: last.text + sign, face };
    else pieces.push({ text: sign, face });
  }
  return pieces;
};

/**
 * A line may break at a space, and after a hyphen or slash inside a word: but never inside a code,
 * which has figures and would be misread in two halves.
 */
const PARTS = /\n| |[^ \n]+/g;
const INSIDE = /[^/-]*[/-]+|[^/-]+/g;
const partsOf = (text: string): string[] =>
  (text.match(PARTS) ?? []).flatMap((part) =>
    /[0-9]/.test(part) ? [part] : (part.match(INSIDE) ?? []),
  );

const words = memo<readonly Word[]>(2000);

/** Tells apart all that sets two texts apart. */
export const keyOf = (runs: readonly Run[], ...measures: readonly number[]): string =>
  measures.join() +
  runs.map(({ text, strong }) => (strong === true ? '\u0001' : '\0') + text).join('');

/** The words of a text, in their faces and as wide as they are at a type size. */
export const toWords = (runs: readonly Run[], sizePt: number): readonly Word[] =>
  words(keyOf(runs, sizePt), () => splitWords(runs, sizePt));

const splitWords = (runs: readonly Run[], sizePt: number): Word[] => {
  const found: Word[] = [];
  let pieces: Piece[] = [];
  let spaceBefore: Piece | undefined;
  let newLine = false;
  const close = (): void => {
    if (pieces.length === 0) return;
    const widthMm = pieces.reduce((total, piece) => total + pieceWidth(piece, sizePt), 0);
    found.push({ pieces, widthMm, spaceBefore, newLine });
    pieces = [];
    spaceBefore = undefined;
    newLine = false;
  };
  for (const { text, face } of runs.flatMap(inFaces)) {
    for (const part of partsOf(text)) {
      if (part === ' ') {
        close();
        spaceBefore = { text: ' ', face };
      } else if (part === '\n') {
        close();
        if (newLine) found.push({ pieces: [], widthMm: 0, spaceBefore: undefined, newLine });
        newLine = true;
      } else {
        pieces.push({ text: part, face });
        if (/^[^0-9]*[/-]$/.test(part)) close();
      }
    }
  }
  close();
  return found;
};

/** Cuts a word that is wider than the line; the last resort, and only where it is allowed. */
export const cutWord = (word: Word, widthMm: number, sizePt: number): Word[] => {
  const parts: Word[] = [];
  let pieces: Piece[] = [];
  let used = 0;
  const close = (): void => {
    const isFirst = parts.length === 0;
    parts.push({
      pieces,
      widthMm: used,
      spaceBefore: isFirst ? word.spaceBefore : undefined,
      newLine: isFirst && word.newLine,
    });
    pieces = [];
    used = 0;
  };
  for (const { text, face } of word.pieces) {
    for (const sign of text) {
      const piece = { text: sign, face };
      const width = pieceWidth(piece, sizePt);
      if (used + width > widthMm && pieces.length > 0) close();
      pieces.push(piece);
      used += width;
    }
  }
  close();
  return parts;
};
