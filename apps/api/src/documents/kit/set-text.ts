import { ptToMm, type Face } from './fonts';
import { asRuns, cutWord, pieceWidth, toWords, type Piece, type Words } from './words';

/** A stretch of one line in one face; `xMm` from the line's left end. */
export interface Fragment {
  readonly text: string;
  readonly face: Face;
  readonly xMm: number;
}

export interface Line {
  readonly fragments: readonly Fragment[];
  readonly widthMm: number;
}

/** Height of a line in parts of the type size. */
const LEADING = 1.28;

export const lineHeightMm = (sizePt: number): number => ptToMm(sizePt * LEADING);

const joinPieces = (pieces: readonly Piece[], sizePt: number): Line => {
  const joined: Piece[] = [];
  for (const piece of pieces) {
    const last = joined[joined.length - 1];
    if (last?.face === piece.face) {
      joined[joined.length - 1] = { text: last.text + piece.text, face: last.face };
    } else joined.push(piece);
  }
  let xMm = 0;
  const fragments = joined.map((piece) => {
    const fragment = { ...piece, xMm };
    xMm += pieceWidth(piece, sizePt);
    return fragment;
  });
  return { fragments, widthMm: xMm };
};

/** The widest word, which no line narrower than it can hold. */
export const widestWord = (words: Words, sizePt: number): { text: string; widthMm: number } =>
  toWords(asRuns(words), sizePt).reduce(
    (widest, { pieces, widthMm }) =>
      widthMm > widest.widthMm
        ? { text: pieces.map(({ text }) => text).join(''), widthMm }
        : widest,
    { text: '', widthMm: 0 },
  );

/** Breaks a text into lines of a width. A word wider than the line is cut. */
export const setText = (words: Words, widthMm: number, sizePt: number): Line[] => {
  const lines: Line[] = [];
  let pieces: Piece[] = [];
  let used = 0;
  const close = (): void => {
    lines.push(joinPieces(pieces, sizePt));
    pieces = [];
    used = 0;
  };
  const slackMm = ptToMm(0.01);
  const all = toWords(asRuns(words), sizePt).flatMap((word) =>
    word.widthMm > widthMm + slackMm ? cutWord(word, widthMm, sizePt) : [word],
  );
  for (const word of all) {
    const space = word.spaceBefore;
    const spaceMm = space === undefined ? 0 : pieceWidth(space, sizePt);
    const startsLine = pieces.length === 0;
    const isFull = !startsLine && used + spaceMm + word.widthMm > widthMm + slackMm;
    if (isFull || (word.newLine && (!startsLine || lines.length > 0))) close();
    else if (!startsLine && space !== undefined) {
      pieces.push(space);
      used += spaceMm;
    }
    pieces.push(...word.pieces);
    used += word.widthMm;
  }
  if (pieces.length > 0) close();
  return lines;
};
