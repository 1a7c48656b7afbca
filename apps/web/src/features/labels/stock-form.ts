/** Label stock while it is chosen: every measure as text. */
export interface StockForm {
  readonly kind: 'usual' | 'roll' | 'die_cut' | 'sheet';
  readonly page: 'A4' | 'LETTER';
  readonly widthMm: string;
  readonly heightMm: string;
  readonly columns: string;
  readonly rows: string;
  /** Between two labels of a sheet, across and down. */
  readonly gapXMm: string;
  readonly gapYMm: string;
  readonly startAt: string;
}

export const emptyStock: StockForm = {
  kind: 'usual',
  page: 'A4',
  widthMm: '100',
  heightMm: '70',
  columns: '2',
  rows: '4',
  gapXMm: '0',
  gapYMm: '0',
  startAt: '1',
};

const PAGES = {
  A4: { widthMm: 210, heightMm: 297 },
  LETTER: { widthMm: 215.9, heightMm: 279.4 },
} as const;
const MARGIN_MM = 3;

/** Labels of a sheet are set in its middle, so that the four measures of its grid say all. */
const sheetOf = (form: StockForm): Record<string, unknown> => {
  const page = PAGES[form.page];
  const [columns, rows] = [Number(form.columns), Number(form.rows)];
  const [labelWidthMm, labelHeightMm] = [Number(form.widthMm), Number(form.heightMm)];
  const [gapX, gapY] = [Number(form.gapXMm), Number(form.gapYMm)];
  const whole = (count: number, size: number, gap: number): number =>
    count * size + (count - 1) * gap;
  return {
    kind: 'sheet',
    page: form.page,
    columns,
    rows,
    labelWidthMm,
    labelHeightMm,
    leftMm: Math.max(0, (page.widthMm - whole(columns, labelWidthMm, gapX)) / 2),
    topMm: Math.max(0, (page.heightMm - whole(rows, labelHeightMm, gapY)) / 2),
    pitchXMm: labelWidthMm + gapX,
    pitchYMm: labelHeightMm + gapY,
    marginMm: MARGIN_MM,
    startAt: Number(form.startAt),
  };
};

/** The stock as the service takes it; undefined for the workshop's usual one. */
export const stockOf = (form: StockForm): Record<string, unknown> | undefined => {
  const widthMm = Number(form.widthMm);
  switch (form.kind) {
    case 'usual':
      return undefined;
    case 'roll':
      return { kind: 'roll', widthMm, marginMm: MARGIN_MM };
    case 'die_cut':
      return { kind: 'die_cut', widthMm, heightMm: Number(form.heightMm), marginMm: MARGIN_MM };
    case 'sheet':
      return sheetOf(form);
  }
};
