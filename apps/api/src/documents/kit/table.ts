import { HAIRLINE, INK, placeLines, SOFT, type Mark } from './drawing';
import { lineHeightMm, setText, type Line } from './set-text';
import type { Sheet } from './sheet';
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

const PAD_X_MM = 1.2;
const PAD_Y_MM = 1.1;
const HEAD_PT = 7.5;
const TICK_MM = 3.6;

interface Placed {
  readonly xMm: number;
  readonly widthMm: number;
  readonly align: 'left' | 'right' | 'centre';
}

const isWords = (cell: Cell): cell is Words => typeof cell === 'string' || Array.isArray(cell);

const emphasise = (cell: Cell, strong: boolean): Cell => {
  if (!strong || !isWords(cell)) return cell;
  const runs = typeof cell === 'string' ? [{ text: cell }] : cell;
  return runs.map((run) => ({ ...run, bold: true }));
};

class TableSetter {
  private readonly columns: readonly Placed[];
  private readonly sizePt: number;

  constructor(
    private readonly sheet: Sheet,
    private readonly table: Table,
  ) {
    this.sizePt = table.sizePt ?? 8.5;
    const total = table.columns.reduce((sum, { share }) => sum + share, 0);
    let xMm = sheet.leftMm;
    this.columns = table.columns.map(({ share, align = 'left' }) => {
      const widthMm = (sheet.widthMm * share) / total;
      const placed = { xMm, widthMm, align };
      xMm += widthMm;
      return placed;
    });
  }

  private lines(cell: Cell, column: Placed): Line[] {
    if (!isWords(cell)) return [];
    return setText(this.sheet.printable(cell), column.widthMm - 2 * PAD_X_MM, this.sizePt);
  }

  head(): void {
    const titles = this.table.columns.map(({ title }, index) => {
      const column = this.columns[index];
      if (column === undefined) return { lines: [], at: undefined };
      const lines = setText([{ text: title, bold: true }], column.widthMm - 2 * PAD_X_MM, HEAD_PT);
      return { lines, at: column };
    });
    const deepest = Math.max(...titles.map(({ lines }) => lines.length));
    const heightMm = deepest * lineHeightMm(HEAD_PT);
    this.sheet.need(heightMm + 2 * PAD_Y_MM + 12);
    const yMm = this.sheet.cursorMm;
    for (const { lines, at } of titles) {
      if (at === undefined) continue;
      const offset = heightMm - lines.length * lineHeightMm(HEAD_PT);
      this.sheet.add(...this.place(lines, at, yMm + offset, HEAD_PT, SOFT));
    }
    this.sheet.space(heightMm + PAD_Y_MM);
    this.sheet.rule(INK, 0.25);
    this.sheet.space(0.25);
  }

  private place(lines: Line[], at: Placed, yMm: number, sizePt: number, colour: string): Mark[] {
    const box = { xMm: at.xMm + PAD_X_MM, yMm, widthMm: at.widthMm - 2 * PAD_X_MM };
    return placeLines(lines, box, { sizePt, colour, align: at.align });
  }

  /** What isn't words, and how high it is. */
  private object(
    cell: Cell,
    at: Placed,
    yMm: number,
    rowMm: number,
  ): { marks: Mark[]; heightMm: number } {
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
        marks: [{ kind: 'box', xMm: at.xMm + PAD_X_MM, yMm: yMm + 0.2, ...box }],
        heightMm: TICK_MM,
      };
    }
    const rule = { widthMm: at.widthMm - 2 * PAD_X_MM, heightMm: 0.2, colour: SOFT };
    return {
      marks: [{ kind: 'rule', xMm: at.xMm + PAD_X_MM, yMm: yMm + rowMm - 1.2, ...rule }],
      heightMm: 0,
    };
  }

  row({ cells, strong = false }: Row): void {
    const set = this.columns.map((at, index) => {
      const cell = emphasise(cells[index] ?? '', strong);
      return {
        cell,
        at,
        lines: this.lines(cell, at),
        objectMm: this.object(cell, at, 0, 0).heightMm,
      };
    });
    const lineMm = lineHeightMm(this.sizePt);
    const contentMm = Math.max(
      ...set.map(({ lines, objectMm }) => Math.max(lines.length * lineMm, objectMm)),
    );
    const wholeMm = Math.max(contentMm, this.table.rowMm ?? 0);
    if (this.sheet.roomMm < wholeMm + 2 * PAD_Y_MM && this.sheet.roomMm < this.sheet.pageRoomMm) {
      this.sheet.newPage();
      this.head();
    }
    // A row that is higher than a page goes on over as many pages as it needs.
    let from = 0;
    let restMm = wholeMm;
    while (restMm > 0) {
      const fits = Math.max(1, Math.floor((this.sheet.roomMm - 2 * PAD_Y_MM) / lineMm));
      const isLast = restMm + 2 * PAD_Y_MM <= this.sheet.roomMm || fits * lineMm >= restMm;
      const partMm = isLast ? restMm : fits * lineMm;
      if (strong && from === 0) this.sheet.rule(INK, 0.25);
      const yMm = this.sheet.cursorMm + PAD_Y_MM;
      for (const { cell, at, lines } of set) {
        const part = isLast ? lines.slice(from) : lines.slice(from, from + fits);
        this.sheet.add(...this.place(part, at, yMm, this.sizePt, INK));
        if (from === 0) this.sheet.add(...this.object(cell, at, yMm, partMm).marks);
      }
      this.sheet.space(partMm + 2 * PAD_Y_MM);
      from += fits;
      restMm = isLast ? 0 : restMm - partMm;
      if (!isLast) {
        this.sheet.newPage();
        this.head();
      }
    }
    this.sheet.rule(HAIRLINE, 0.15);
  }
}

/** Sets a table; its head is repeated on every page. */
export const table = (sheet: Sheet, content: Table): void => {
  const setter = new TableSetter(sheet, content);
  setter.head();
  for (const row of content.rows) setter.row(row);
  sheet.space(3);
};
