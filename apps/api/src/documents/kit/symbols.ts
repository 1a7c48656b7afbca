import { raw } from 'bwip-js/node';
import { create as createQr } from 'qrcode';
import { memo } from './memo';

/** Bar codes that are printed here. All are drawn as vectors. */
export type SymbolKind = 'datamatrix' | 'gs1datamatrix' | 'qrcode' | 'gs1-128' | 'ean13';

/** A dark rectangle, in modules from the symbol's top left corner, quiet zone not counted. */
interface Bar {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface BarSymbol {
  readonly kind: SymbolKind;
  readonly text: string;
  readonly bars: readonly Bar[];
  /** In modules, without the quiet zone. */
  readonly width: number;
  readonly height: number;
  readonly quiet: { readonly left: number; readonly right: number; readonly around: number };
}

/**
 * Three dots of a 203 dpi printer, five (rounded) of one of 300: the finest module that both print
 * clearly, and close to the 0.38 mm that GS1 aims at.
 */
export const FINE_MODULE_MM = (3 * 25.4) / 203;
/** Four dots at 203 dpi: for tags that are scanned with wet hands and from a distance. */
export const BOLD_MODULE_MM = (4 * 25.4) / 203;

/** Modules of white around each kind (ISO/IEC 16022, 18004, 15417, 15420). */
const QUIET: Readonly<Record<SymbolKind, BarSymbol['quiet']>> = {
  datamatrix: { left: 2, right: 2, around: 2 },
  gs1datamatrix: { left: 2, right: 2, around: 2 },
  qrcode: { left: 4, right: 4, around: 4 },
  'gs1-128': { left: 10, right: 10, around: 1 },
  ean13: { left: 11, right: 7, around: 1 },
};

/** Heights of the bars in modules: EAN-13 keeps 22.85 of 0.33 mm; GS1-128 is cut lower for labels. */
const BAR_HEIGHT = { ean13: 69, 'gs1-128': 34 } as const;

interface RawMatrix {
  /** Row by row; 1 is dark. */
  readonly pixs: ArrayLike<number>;
  readonly pixx: number;
  readonly pixy: number;
}
interface RawBars {
  /** Widths of bar, space, bar … in modules. */
  readonly sbs: readonly number[];
}

const isMatrix = (symbol: object): symbol is RawMatrix => 'pixs' in symbol;
const isBars = (symbol: object): symbol is RawBars => 'sbs' in symbol;

const matrixBars = ({ pixs, pixx, pixy }: RawMatrix): Bar[] => {
  const bars: Bar[] = [];
  for (let y = 0; y < pixy; y += 1) {
    let start = -1;
    for (let x = 0; x <= pixx; x += 1) {
      const dark = x < pixx && pixs[y * pixx + x] === 1;
      if (dark && start < 0) start = x;
      if (!dark && start >= 0) {
        bars.push({ x: start, y, width: x - start, height: 1 });
        start = -1;
      }
    }
  }
  return bars;
};

const linearBars = ({ sbs }: RawBars, height: number): { bars: Bar[]; width: number } => {
  const bars: Bar[] = [];
  let x = 0;
  for (const [index, width] of sbs.entries()) {
    if (index % 2 === 0) bars.push({ x, y: 0, width, height });
    x += width;
  }
  return { bars, width: x };
};

const symbols = memo<BarSymbol>(500);

/** A run of a thousand boxes has a thousand codes of this kind, and this library takes an eighth of the time. */
const qrMatrix = (text: string): RawMatrix => {
  const { data, size } = createQr(text, { errorCorrectionLevel: 'M' }).modules;
  return { pixs: data, pixx: size, pixy: size };
};

const encode = (kind: SymbolKind, text: string): BarSymbol => {
  const [symbol] = kind === 'qrcode' ? [qrMatrix(text)] : (raw({ bcid: kind, text }) as object[]);
  if (symbol === undefined) throw new Error(`No ${kind} came of ${text}`);
  const quiet = QUIET[kind];
  if (isMatrix(symbol)) {
    const { pixx: width, pixy: height } = symbol;
    return { kind, text, bars: matrixBars(symbol), width, height, quiet };
  }
  if (!isBars(symbol)) throw new Error(`${kind} came in an unknown form`);
  const height = kind === 'ean13' ? BAR_HEIGHT.ean13 : BAR_HEIGHT['gs1-128'];
  return { kind, text, ...linearBars(symbol, height), height, quiet };
};

/**
 * Encodes a text. GS1 symbols take the bracketed form, `(01)…(10)…`.
 * @throws when the text can't stand in that kind of symbol (a wrong check digit, a foreign letter):
 * callers write codes through domain/identification, so it is a mistake of the program.
 */
export const barSymbol = (kind: SymbolKind, text: string): BarSymbol =>
  symbols(`${kind} ${text}`, () => encode(kind, text));

/** Size on paper, quiet zone included. */
export const symbolSize = (
  { width, height, quiet }: BarSymbol,
  moduleMm: number,
): { readonly widthMm: number; readonly heightMm: number } => ({
  widthMm: (width + quiet.left + quiet.right) * moduleMm,
  heightMm: (height + quiet.around * 2) * moduleMm,
});
