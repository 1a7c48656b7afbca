import { ptToMm, widthRatio, type Face } from './fonts';
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

/** A line may break at a space, and after a hyphen or slash inside a word. */
const BREAKS = /(\n| |[^ \n/-]*[/-]+|[^ \n/-]+)/g;

export const toWords = (runs: readonly Run[], sizePt: number): Word[] => {
  const words: Word[] = [];
  let pieces: Piece[] = [];
  let spaceBefore: Piece | undefined;
  let newLine = false;
  const close = (): void => {
    if (pieces.length === 0) return;
    const widthMm = pieces.reduce((total, piece) => total + pieceWidth(piece, sizePt), 0);
    words.push({ pieces, widthMm, spaceBefore, newLine });
    pieces = [];
    spaceBefore = undefined;
    newLine = false;
  };
  for (const { text, face } of runs.flatMap(inFaces)) {
    for (const part of text.match(BREAKS) ?? []) {
      if (part === ' ') {
        close();
        spaceBefore = { text: ' ', face };
      } else if (part === '\n') {
        close();
        if (newLine) words.push({ pieces: [], widthMm: 0, spaceBefore: undefined, newLine });
        newLine = true;
      } else {
        pieces.push({ text: part, face });
        if (/[/-]$/.test(part)) close();
      }
    }
  }
  close();
  return words;
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
