/** Label stock while it is chosen: every measure as text. */
export interface StockForm {
  readonly kind: 'usual' | 'roll' | 'die_cut' | 'sheet';
  readonly widthMm: string;
  readonly heightMm: string;
  readonly columns: string;
  readonly rows: string;
  readonly startAt: string;
}

export const emptyStock: StockForm = {
  kind: 'usual',
  widthMm: '100',
  heightMm: '70',
  columns: '2',
  rows: '4',
  startAt: '1',
};

const A4 = { widthMm: 210, heightMm: 297 };
const MARGIN_MM = 3;

/** The stock as the service takes it; a sheet's grid is centred on A4 without gaps. */
export const stockOf = (form: StockForm): Record<string, unknown> | undefined => {
  const widthMm = Number(form.widthMm);
  const heightMm = Number(form.heightMm);
  const marginMm = MARGIN_MM;
  switch (form.kind) {
    case 'usual':
      return undefined;
    case 'roll':
      return { kind: 'roll', widthMm, marginMm };
    case 'die_cut':
      return { kind: 'die_cut', widthMm, heightMm, marginMm };
    case 'sheet': {
      const columns = Number(form.columns);
      const rows = Number(form.rows);
      return {
        kind: 'sheet',
        page: 'A4',
        columns,
        rows,
        labelWidthMm: widthMm,
        labelHeightMm: heightMm,
        leftMm: Math.max(0, (A4.widthMm - columns * widthMm) / 2),
        topMm: Math.max(0, (A4.heightMm - rows * heightMm) / 2),
        pitchXMm: widthMm,
        pitchYMm: heightMm,
        marginMm,
        startAt: Number(form.startAt),
      };
    }
  }
};
