import { SOFT, type Mark } from './drawing';
import { FINE_MODULE_MM, symbolSize, type BarSymbol } from './symbols';
import type { Words } from './words';

export interface Column {
  readonly title: string;
  /** Share of the width, against the other columns. */
  readonly share: number;
  readonly align?: 'left' | 'right' | 'centre';
}

/** What stands in a cell: words, a code to scan, a box to tick, or a line to write on. */
export type Cell = Words | { readonly symbol: BarSymbol } | { readonly form: 'tick' | 'write' };

export interface Row {
  readonly cells: readonly Cell[];
  /** Totals and sums: bold, with a rule above. */
  readonly strong?: boolean;
}

export interface Table {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  readonly sizePt?: number;
  /** Least height of a row, for papers that are filled in by hand. */
  readonly rowMm?: number;
}

const TICK_MM = 3.6;

/** A column's place on the sheet. */
export interface Placed {
  readonly xMm: number;
  readonly widthMm: number;
  readonly align: 'left' | 'right' | 'centre';
}

export const isWords = (cell: Cell): cell is Words =>
  typeof cell === 'string' || Array.isArray(cell);

export const emphasise = (cell: Cell, strong: boolean): Cell => {
  if (!strong || !isWords(cell)) return cell;
  const runs = typeof cell === 'string' ? [{ text: cell }] : cell;
  return runs.map((run) => ({ ...run, strong: true }));
};

/** What isn't words, and how high it is. */
export const cellObject = (
  cell: Cell,
  at: Placed,
  yMm: number,
  rowMm: number,
): { marks: Mark[]; heightMm: number } => {
  if (isWords(cell)) return { marks: [], heightMm: 0 };
  if ('symbol' in cell) {
    const { widthMm, heightMm } = symbolSize(cell.symbol, FINE_MODULE_MM);
    const xMm = at.xMm + (at.widthMm - widthMm) / 2;
    const mark = {
      kind: 'symbol',
      symbol: cell.symbol,
      xMm,
      yMm,
      moduleMm: FINE_MODULE_MM,
    } as const;
    return { marks: [mark], heightMm };
  }
  if (cell.form === 'tick') {
    const box = { widthMm: TICK_MM, heightMm: TICK_MM, lineMm: 0.3 };
    return {
      marks: [{ kind: 'box', xMm: at.xMm, yMm: yMm + 0.2, ...box }],
      heightMm: TICK_MM,
    };
  }
  const rule = { widthMm: at.widthMm, heightMm: 0.2, colour: SOFT };
  return {
    marks: [{ kind: 'rule', xMm: at.xMm, yMm: yMm + rowMm - 1.2, ...rule }],
    heightMm: 0,
  };
};
