import { ascentRatio, descentRatio, ptToMm } from './fonts';
import { lineHeightMm, setText, type Line } from './set-text';
import type { BarSymbol } from './symbols';
import type { Words } from './words';

/** Near-black, a softer ink for what is said in passing, and hairlines. Print is one colour. */
export const INK = '#1c1917';
export const SOFT = '#57534e';
export const HAIRLINE = '#b8b0a6';

export type Mark = TextMark | RuleMark | BoxMark | SymbolMark;

/** One line of text. `yMm` is its baseline. */
export interface TextMark {
  readonly kind: 'text';
  readonly line: Line;
  readonly xMm: number;
  readonly yMm: number;
  readonly sizePt: number;
  readonly colour: string;
  /** Reads upwards from (x, y): headings of narrow columns. */
  readonly turned?: boolean;
}

export interface RuleMark {
  readonly kind: 'rule';
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly colour: string;
}

/** An empty frame: a box to tick, a line to write on. */
export interface BoxMark {
  readonly kind: 'box';
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly lineMm: number;
}

/** A bar code with its quiet zone; x and y are the quiet zone's corner. */
export interface SymbolMark {
  readonly kind: 'symbol';
  readonly symbol: BarSymbol;
  readonly xMm: number;
  readonly yMm: number;
  readonly moduleMm: number;
}

/** What stands on one face of paper, with its size: laid out once, drawn as often as wanted. */
export interface Drawing {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marks: readonly Mark[];
}

export interface TextStyle {
  readonly sizePt: number;
  readonly colour?: string;
  readonly align?: 'left' | 'right' | 'centre';
}

/** From the top of a line to its baseline, so that leading stands half above and half below. */
export const baselineMm = (sizePt: number): number => {
  const bodyMm = ptToMm((ascentRatio('regular') + descentRatio('regular')) * sizePt);
  return (lineHeightMm(sizePt) - bodyMm) / 2 + ptToMm(ascentRatio('regular') * sizePt);
};

/** Places lines that are already set, one under the other, from a top left corner. */
export const placeLines = (
  lines: readonly Line[],
  at: { readonly xMm: number; readonly yMm: number; readonly widthMm: number },
  style: TextStyle,
): TextMark[] =>
  lines.map((line, index) => {
    const spare = at.widthMm - line.widthMm;
    const indent = style.align === 'right' ? spare : style.align === 'centre' ? spare / 2 : 0;
    return {
      kind: 'text',
      line,
      xMm: at.xMm + indent,
      yMm: at.yMm + index * lineHeightMm(style.sizePt) + baselineMm(style.sizePt),
      sizePt: style.sizePt,
      colour: style.colour ?? INK,
    };
  });

/** Sets a text into a column. */
export const placeText = (
  words: Words,
  at: { readonly xMm: number; readonly yMm: number; readonly widthMm: number },
  style: TextStyle,
): { readonly marks: readonly TextMark[]; readonly heightMm: number } => {
  const lines = setText(words, at.widthMm, style.sizePt);
  return {
    marks: placeLines(lines, at, style),
    heightMm: lines.length * lineHeightMm(style.sizePt),
  };
};
