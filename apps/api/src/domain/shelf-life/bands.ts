import { Decimal } from '../units';
import { say } from '../words/say';

export interface LifeBand {
  /** The band holds from this water activity up. */
  readonly fromWaterActivity: Decimal;
  readonly lowDays: number;
  /** Null: other limits rule. */
  readonly highDays: number | null;
  readonly storage: string;
}

const band = (
  from: string,
  lowDays: number,
  highDays: number | null,
  storage: string,
): LifeBand => ({
  fromWaterActivity: new Decimal(from),
  lowDays,
  highDays,
  storage,
});

/**
 * Common practice, no source: life of a filling at 18 °C or less, well sealed, clean work. A value on
 * the edge of two bands falls into the wetter one.
 */
export const LIFE_BANDS: readonly LifeBand[] = [
  band('0.90', 3, 7, say`refrigerate at 4–5 °C or colder; fresh goods`),
  band('0.85', 7, 21, say`cold, 16 °C or less`),
  band('0.80', 21, 42, say`16–18 °C, well sealed`),
  band('0.75', 42, 70, say`16–18 °C, well sealed`),
  band('0.70', 60, 120, say`16–18 °C, well sealed; moulds are possible`),
  band('0.65', 120, 180, say`16–18 °C, well sealed`),
  band('0', 180, null, say`16–18 °C; limits other than growth rule`),
];

/** Band of a water activity; pass the worse end of its error. */
export const lifeBand = (waterActivity: Decimal): LifeBand => {
  const found = LIFE_BANDS.find((row) => waterActivity.greaterThanOrEqualTo(row.fromWaterActivity));
  if (!found) throw new RangeError('a water activity is not negative');
  return found;
};

/** The formula was fitted to cake between these; outside them nothing is said. */
const FORMULA_FROM = 0.74;
const FORMULA_TO = 0.9;

/**
 * Mould-free life in days: log₁₀ d = 7.91 − 0.081·ERH at 21 °C (bakery formula in an encyclopedia
 * copy), 6.42 − 0.065·ERH at 27 °C (from memory). For cake with air: a lower guide only. Works in
 * `number`; the fit itself is good to a few days. Null outside 0.74–0.90.
 */
export const mouldFreeDays = (waterActivity: Decimal, at: 21 | 27 = 21): number | null => {
  const aw = waterActivity.toNumber();
  if (aw < FORMULA_FROM || aw > FORMULA_TO) return null;
  return at === 21 ? 10 ** (7.91 - 8.1 * aw) : 10 ** (6.42 - 6.5 * aw);
};
