import { Decimal } from '../units';
import { say } from '../words/say';

/** The products that are tempered here, each with windows of its own. */
export type TemperedProduct = 'dark' | 'milk' | 'white' | 'coloured_cocoa_butter';
export type TemperingStep = 'melt' | 'cool' | 'work';

export interface TempWindow {
  readonly lowC: Decimal;
  readonly highC: Decimal;
}

/** Three windows in °C; a product without a cooling step has null there. */
export interface TemperingCurve {
  readonly melt: TempWindow;
  readonly cool: TempWindow | null;
  readonly work: TempWindow;
  /** Where the windows come from, shown beside them. */
  readonly source: string;
}

const between = (low: number, high: number): TempWindow => ({
  lowC: new Decimal(low),
  highC: new Decimal(high),
});

const BOOKS = say`professional tempering charts (H. McGee, On Food and Cooking, and a pastry-school handbook); the maker’s own curve beats them`;

/** Used only when the maker of the chocolate states no curve. */
export const TABLE_CURVES: Readonly<Record<TemperedProduct, TemperingCurve>> = {
  dark: { melt: between(50, 55), cool: between(28, 29), work: between(31, 32), source: BOOKS },
  milk: { melt: between(45, 50), cool: between(27, 28), work: between(30, 31), source: BOOKS },
  white: { melt: between(45, 50), cool: between(26, 27), work: between(29, 30), source: BOOKS },
  coloured_cocoa_butter: {
    melt: between(40, 45),
    cool: null,
    work: between(28, 32),
    source: say`common practice, no source`,
  },
};

/** Warmest filling that may go into a shell, °C (common practice, no source). */
export const WARMEST_FILLING_C: Readonly<Record<'dark' | 'milk' | 'white', Decimal>> = {
  dark: new Decimal(32),
  milk: new Decimal(29),
  white: new Decimal(29),
};

/** Melting points of the crystal forms of cocoa butter, °C (Wille & Lutton 1966). V is wanted. */
export const COCOA_BUTTER_FORMS_C = {
  I: new Decimal('17.3'),
  II: new Decimal('23.3'),
  III: new Decimal('25.5'),
  IV: new Decimal('27.3'),
  V: new Decimal('33.8'),
  VI: new Decimal('36.3'),
} as const;

/**
 * Heat to take out of chocolate that is cooled and set, kJ per kg: sensible 1.59 J/g·K and latent
 * heat 46 (dark) or 44 (milk) J/g (Beckett, Industrial Chocolate Manufacture and Use, 4th ed.).
 */
export const heatToSetKjPerKg = (kind: 'dark' | 'milk', fromC: Decimal, toC: Decimal): Decimal =>
  fromC
    .minus(toC)
    .times('1.59')
    .plus(kind === 'dark' ? 46 : 44);
