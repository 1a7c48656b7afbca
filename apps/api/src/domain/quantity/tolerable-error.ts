import { Decimal } from '../units';

/**
 * Tolerable negative error of a pack, Directive 76/211/EEC, Annex I 2.4, for 5 g to 10 kg. A
 * percentage becomes grams rounded up to a tenth (from memory). Null outside the Directive's range.
 */
export const tolerableNegativeErrorG = (nominalG: Decimal): Decimal | null => {
  if (nominalG.lessThan(5) || nominalG.greaterThan(10_000)) return null;
  const row = ROWS.find(({ upToG }) => nominalG.lessThanOrEqualTo(upToG));
  if (!row) return null;
  if (row.grams !== undefined) return new Decimal(row.grams);
  return nominalG.times(row.percent).dividedBy(100).toDecimalPlaces(1, Decimal.ROUND_CEIL);
};

type Row = { readonly upToG: number } & (
  | { readonly grams: string; readonly percent?: undefined }
  | { readonly percent: string; readonly grams?: undefined }
);

const ROWS: readonly Row[] = [
  { upToG: 50, percent: '9' },
  { upToG: 100, grams: '4.5' },
  { upToG: 200, percent: '4.5' },
  { upToG: 300, grams: '9' },
  { upToG: 500, percent: '3' },
  { upToG: 1000, grams: '15' },
  { upToG: 10_000, percent: '1.5' },
];

export interface Limits {
  readonly errorG: Decimal;
  /** Below this a pack is defective: only few in a batch may be. */
  readonly t1G: Decimal;
  /** Below this no pack may bear the e-mark, nor be sold in the United Kingdom. */
  readonly t2G: Decimal;
}

export const limitsOf = (nominalG: Decimal): Limits | null => {
  const errorG = tolerableNegativeErrorG(nominalG);
  if (!errorG) return null;
  return { errorG, t1G: nominalG.minus(errorG), t2G: nominalG.minus(errorG.times(2)) };
};
