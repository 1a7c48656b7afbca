import { ptToMm, type Face } from './fonts';
import { memo } from './memo';
import {
  asRuns,
  cutWord,
  keyOf,
  pieceWidth,
  toWords,
  type Piece,
  type Run,
  type Words,
} from './words';

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

/** Pieces of one face become one fragment; each begins where those before it end. */
const joinPieces = (pieces: readonly Piece[], sizePt: number): Line => {
  const fragments: { text: string; face: Face; xMm: number }[] = [];
  let xMm = 0;
  for (const piece of pieces) {
    const last = fragments[fragments.length - 1];
    if (last?.face === piece.face) last.text += piece.text;
    else fragments.push({ ...piece, xMm });
    xMm += pieceWidth(piece, sizePt);
  }
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
export const setText = (words: Words, widthMm: number, sizePt: number): readonly Line[] => {
  const runs = asRuns(words);
  return lines(keyOf(runs, widthMm, sizePt), () => breakLines(runs, widthMm, sizePt));
};

const lines = memo<readonly Line[]>(5000);

const breakLines = (runs: readonly Run[], widthMm: number, sizePt: number): Line[] => {
  const done: Line[] = [];
  let pieces: Piece[] = [];
  let used = 0;
  const close = (): void => {
    done.push(joinPieces(pieces, sizePt));
    pieces = [];
    used = 0;
  };
  const slackMm = ptToMm(0.01);
  const all = toWords(runs, sizePt).flatMap((word) =>
    word.widthMm > widthMm + slackMm ? cutWord(word, widthMm, sizePt) : [word],
  );
  for (const word of all) {
    const space = word.spaceBefore;
    const spaceMm = space === undefined ? 0 : pieceWidth(space, sizePt);
    const startsLine = pieces.length === 0;
    const isFull = !startsLine && used + spaceMm + word.widthMm > widthMm + slackMm;
    if (isFull || (word.newLine && (!startsLine || done.length > 0))) close();
    else if (!startsLine && space !== undefined) {
      pieces.push(space);
      used += spaceMm;
    }
    pieces.push(...word.pieces);
    used += word.widthMm;
  }
  if (pieces.length > 0) close();
  return done;
};
