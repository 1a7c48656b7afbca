import { HAIRLINE, INK, placeLines, SOFT, type Mark } from './drawing';
import { lineHeightMm, setText, type Line } from './set-text';
import type { Sheet } from './sheet';
import {
  cellObject,
  emphasise,
  isWords,
  type Cell,
  type Placed,
  type Row,
  type Table,
} from './table-cells';

export type { Cell, Column, Row, Table } from './table-cells';

/** Between two columns. */
const GAP_MM = 3.2;
const PAD_Y_MM = 1.1;
const HEAD_PT = 7.5;

class TableSetter {
  private readonly columns: readonly Placed[];
  private readonly sizePt: number;

  constructor(
    private readonly sheet: Sheet,
    private readonly table: Table,
  ) {
    this.sizePt = table.sizePt ?? 8.5;
    const total = table.columns.reduce((sum, { share }) => sum + share, 0);
    const roomMm = sheet.widthMm - (table.columns.length - 1) * GAP_MM;
    let xMm = sheet.leftMm;
    this.columns = table.columns.map(({ share, align = 'left' }) => {
      const widthMm = (roomMm * share) / total;
      const placed = { xMm, widthMm, align };
      xMm += widthMm + GAP_MM;
      return placed;
    });
  }

  private lines(cell: Cell, column: Placed): readonly Line[] {
    if (!isWords(cell)) return [];
    return setText(this.sheet.printable(cell), column.widthMm, this.sizePt);
  }

  head(): void {
    const titles = this.table.columns.map(({ title }, index) => {
      const column = this.columns[index];
      if (column === undefined) return { lines: [], at: undefined };
      const lines = setText([{ text: title, strong: true }], column.widthMm, HEAD_PT);
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

  private place(
    lines: readonly Line[],
    at: Placed,
    yMm: number,
    sizePt: number,
    colour: string,
  ): Mark[] {
    const box = { xMm: at.xMm, yMm, widthMm: at.widthMm };
    return placeLines(lines, box, { sizePt, colour, align: at.align });
  }

  row({ cells, strong = false }: Row): void {
    const set = this.columns.map((at, index) => {
      const cell = emphasise(cells[index] ?? '', strong);
      return {
        cell,
        at,
        lines: this.lines(cell, at),
        objectMm: cellObject(cell, at, 0, 0).heightMm,
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
        if (from === 0) this.sheet.add(...cellObject(cell, at, yMm, partMm).marks);
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
