import { refuse, ok, type Result } from '../../domain/refusals';
import type { PrintingRefusal } from '../../domain/printing';
import { INK, placeLines, placeText, SOFT, type Drawing, type Mark } from '../kit/drawing';
import { substituteSigns } from '../kit/printable';
import { cutLines } from './cut-lines';
import { lineHeightMm, setText, type Line } from '../kit/set-text';
import { BOLD_MODULE_MM, barSymbol, FINE_MODULE_MM, symbolSize } from '../kit/symbols';
import { say } from '../../domain/words/say';

/** A tag that sticks on a carton, a tray, a tank or a shelf: a code to scan and a few words. */
export interface Tag {
  readonly code: string;
  readonly name: string;
  /** The date, in bold under the name. */
  readonly strong: string | null;
  /** Small lines under the name, most needed first: those without room are left off. */
  readonly lines: readonly string[];
  /** Stands out at the foot: `ON HOLD: no specification`. Never left off. */
  readonly warning: string | null;
}

export interface TagSize {
  readonly widthMm: number;
  /** Undefined on a continuous roll: as high as it needs to be. */
  readonly heightMm: number | undefined;
  readonly marginMm: number;
}

const CODE_PT = 15;
const NAME_PT = 11;
const STRONG_PT = 10;
const LINE_PT = 8.5;
const GAP_MM = 2;
const MOST_NAME_LINES = 3;

const tooSmall = (tag: Tag, neededMm: number): Result<never, PrintingRefusal> =>
  refuse({
    code: 'label-does-not-fit',
    detail: say`The tag of ${tag.code} needs ${Math.ceil(neededMm)} mm on this stock. Take a larger label.`,
    facts: { code: tag.code, neededMm: Math.ceil(neededMm) },
  });

interface Column {
  readonly xMm: number;
  readonly widthMm: number;
}

const textMarks = (
  tag: Tag,
  column: Column,
  topMm: number,
  roomMm: number,
): { marks: Mark[]; endMm: number } => {
  const marks: Mark[] = [];
  let yMm = topMm;
  const put = (lines: readonly Line[], sizePt: number, colour: string): void => {
    marks.push(...placeLines(lines, { ...column, yMm }, { sizePt, colour }));
    yMm += lines.length * lineHeightMm(sizePt);
  };
  put(setText([{ text: tag.code, strong: true }], column.widthMm, CODE_PT), CODE_PT, INK);
  const dateMm = tag.strong === null ? 0 : lineHeightMm(STRONG_PT);
  const left = Math.floor((topMm + roomMm - yMm - dateMm) / lineHeightMm(NAME_PT));
  const most = Math.max(1, Math.min(MOST_NAME_LINES, left));
  put(cutLines(substituteSigns(tag.name), column.widthMm, NAME_PT, most, true), NAME_PT, INK);
  if (tag.strong !== null) {
    put(cutLines(substituteSigns(tag.strong), column.widthMm, STRONG_PT, 2, true), STRONG_PT, INK);
  }
  for (const line of tag.lines.map(substituteSigns)) {
    const lines = cutLines(line, column.widthMm, LINE_PT, 2, false);
    if (yMm + lines.length * lineHeightMm(LINE_PT) > topMm + roomMm) break;
    put(lines, LINE_PT, SOFT);
  }
  return { marks, endMm: yMm };
};

/** Lays a tag out: the code at the right, words at the left, a warning over the whole foot. */
export const layTag = (tag: Tag, size: TagSize): Result<Drawing, PrintingRefusal> => {
  const innerMm = size.widthMm - 2 * size.marginMm;
  const symbol = barSymbol('qrcode', tag.code);
  const moduleMm =
    symbolSize(symbol, BOLD_MODULE_MM).widthMm <= innerMm * 0.4 ? BOLD_MODULE_MM : FINE_MODULE_MM;
  const symbolMm = symbolSize(symbol, moduleMm);
  const column = { xMm: size.marginMm, widthMm: innerMm - symbolMm.widthMm };
  if (setText([{ text: tag.code, strong: true }], column.widthMm, CODE_PT).length > 1) {
    const codeMm = setText([{ text: tag.code, strong: true }], 500, CODE_PT)[0]?.widthMm ?? 0;
    return tooSmall(tag, codeMm + symbolMm.widthMm + 2 * size.marginMm);
  }
  const warning = tag.warning === null ? '' : substituteSigns(tag.warning);
  const foot = placeText(
    [{ text: warning, strong: true }],
    { xMm: size.marginMm, yMm: 0, widthMm: innerMm },
    { sizePt: NAME_PT },
  );
  const footMm = warning === '' ? 0 : foot.heightMm + GAP_MM;
  const leastMm =
    Math.max(
      symbolMm.heightMm,
      lineHeightMm(CODE_PT) +
        lineHeightMm(NAME_PT) +
        (tag.strong === null ? 0 : lineHeightMm(STRONG_PT)),
    ) +
    footMm +
    2 * size.marginMm;
  if (size.heightMm !== undefined && size.heightMm < leastMm) return tooSmall(tag, leastMm);
  const roomMm = (size.heightMm ?? 1000) - 2 * size.marginMm - footMm;
  const text = textMarks(tag, column, size.marginMm, roomMm);
  const bodyMm = Math.max(text.endMm, size.marginMm + symbolMm.heightMm);
  const heightMm = size.heightMm ?? bodyMm + footMm + size.marginMm;
  const footTop = heightMm - size.marginMm - foot.heightMm;
  const rule: Mark = {
    kind: 'rule',
    xMm: size.marginMm,
    yMm: footTop - 1,
    widthMm: innerMm,
    heightMm: 0.5,
    colour: INK,
  };
  return ok({
    widthMm: size.widthMm,
    heightMm,
    marks: [
      ...text.marks,
      {
        kind: 'symbol',
        symbol,
        xMm: size.marginMm + column.widthMm,
        yMm: size.marginMm,
        moduleMm,
      },
      ...(warning === ''
        ? []
        : [rule, ...foot.marks.map((mark) => ({ ...mark, yMm: mark.yMm + footTop }))]),
    ],
  });
};
