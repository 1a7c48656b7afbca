import { ok, refuse, type Result } from '../refusals/result';
import type { PrintingRefusal } from './refusals';
import { say, type Sentence } from '../words/say';

/** The label stock that a shop has, in millimetres. */
export type LabelStock = RollStock | DieCutStock | SheetStock;

/** A continuous roll: as wide as it is, cut where the label ends. */
export interface RollStock {
  readonly kind: 'roll';
  readonly widthMm: number;
  readonly marginMm: number;
}

/** A roll of labels cut to one size: a page of the PDF is a label. */
export interface DieCutStock {
  readonly kind: 'die_cut';
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marginMm: number;
}

/** A sheet of labels in a grid, measured from its top left corner. */
export interface SheetStock {
  readonly kind: 'sheet';
  readonly page: PageSize;
  readonly columns: number;
  readonly rows: number;
  readonly labelWidthMm: number;
  readonly labelHeightMm: number;
  readonly leftMm: number;
  readonly topMm: number;
  /** From one label's left edge to the next one's. */
  readonly pitchXMm: number;
  readonly pitchYMm: number;
  readonly marginMm: number;
  /** The first free label of the first sheet, counted from 1 by rows. */
  readonly startAt: number;
}

export type PageSize = 'A4' | 'LETTER';

export const PAGE_SIZES_MM: Readonly<Record<PageSize, readonly [number, number]>> = {
  A4: [210, 297],
  LETTER: [215.9, 279.4],
};

/** A label smaller or larger than this is a slip of the pen. */
const SMALLEST_MM = 10;
const LARGEST_MM = 420;
/** Grids are given to a tenth of a millimetre; the sum of many pitches may pass the edge by that. */
const SLACK_MM = 0.5;

const refuseStock = (detail: Sentence): Result<never, PrintingRefusal> =>
  refuse({ code: 'stock-not-valid', detail });

const isSize = (mm: number): boolean => mm >= SMALLEST_MM && mm <= LARGEST_MM;

/** Width and height of one label; a roll has no height of its own. */
export const labelSize = (stock: LabelStock): { widthMm: number; heightMm: number | undefined } => {
  switch (stock.kind) {
    case 'roll':
      return { widthMm: stock.widthMm, heightMm: undefined };
    case 'die_cut':
      return { widthMm: stock.widthMm, heightMm: stock.heightMm };
    case 'sheet':
      return { widthMm: stock.labelWidthMm, heightMm: stock.labelHeightMm };
    default:
      return stock satisfies never;
  }
};

const checkGrid = (stock: SheetStock): Result<LabelStock, PrintingRefusal> => {
  const [pageWidth, pageHeight] = PAGE_SIZES_MM[stock.page];
  const { columns, rows, leftMm, topMm, pitchXMm, pitchYMm, startAt } = stock;
  const isCount = (value: number): boolean => Number.isInteger(value) && value >= 1 && value <= 50;
  if (!isCount(columns) || !isCount(rows)) {
    return refuseStock(say`A sheet has from 1 to 50 columns and rows.`);
  }
  if (!Number.isInteger(startAt) || startAt < 1 || startAt > columns * rows) {
    return refuseStock(say`The first label must be one of the ${columns * rows} on the sheet.`);
  }
  if (pitchXMm < stock.labelWidthMm || pitchYMm < stock.labelHeightMm) {
    return refuseStock(
      say`The labels of this sheet would overlap: the pitch is less than the label.`,
    );
  }
  const right = leftMm + (columns - 1) * pitchXMm + stock.labelWidthMm;
  const bottom = topMm + (rows - 1) * pitchYMm + stock.labelHeightMm;
  if (leftMm < 0 || topMm < 0 || right > pageWidth + SLACK_MM || bottom > pageHeight + SLACK_MM) {
    return refuseStock(
      say`The grid is ${right.toFixed(1)} × ${bottom.toFixed(1)} mm and runs over the sheet of ${pageWidth} × ${pageHeight} mm.`,
    );
  }
  return ok(stock);
};

/** Whether a stock can exist: sizes in range, a margin that leaves room, a grid within its sheet. */
export const checkStock = (stock: LabelStock): Result<LabelStock, PrintingRefusal> => {
  const { widthMm, heightMm } = labelSize(stock);
  if (!isSize(widthMm) || (heightMm !== undefined && !isSize(heightMm))) {
    return refuseStock(say`A label is from ${SMALLEST_MM} to ${LARGEST_MM} mm wide and high.`);
  }
  const shorter = Math.min(widthMm, heightMm ?? widthMm);
  if (!(stock.marginMm >= 0) || stock.marginMm * 2 > shorter / 2) {
    return refuseStock(say`The margin leaves no room for the label.`);
  }
  return stock.kind === 'sheet' ? checkGrid(stock) : ok(stock);
};

export interface Place {
  /** Counted from 0. */
  readonly page: number;
  readonly xMm: number;
  readonly yMm: number;
}

/** Where the label of a number (from 0) goes: a page of its own, or the next free place of a sheet. */
export const placeOf = (stock: LabelStock, number: number): Place => {
  if (stock.kind !== 'sheet') return { page: number, xMm: 0, yMm: 0 };
  const at = number + stock.startAt - 1;
  const onPage = at % (stock.columns * stock.rows);
  return {
    page: Math.floor(at / (stock.columns * stock.rows)),
    xMm: stock.leftMm + (onPage % stock.columns) * stock.pitchXMm,
    yMm: stock.topMm + Math.floor(onPage / stock.columns) * stock.pitchYMm,
  };
};
