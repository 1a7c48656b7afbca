import type { Decimal } from '../units';

/**
 * What a published decision table says of a food: `stable` (no time or temperature control for
 * safety), or `assess` (a product assessment is required). Unknown pH never helps.
 */
export type TableVerdict = 'stable' | 'assess';

type Row = readonly [upToWaterActivity: number, stableUpToPh: number];

const verdictOf = (rows: readonly Row[], above: number, aw: Decimal, ph: Decimal | null) => {
  const row = rows.find(([limit]) => aw.lessThanOrEqualTo(limit));
  const phLimit = row ? row[1] : above;
  if (phLimit === Infinity) return 'stable';
  return ph?.lessThanOrEqualTo(phLimit) ? 'stable' : 'assess';
};

/** US Food Code, definition of TCS food, Table A: heat-treated and then packaged. */
export const foodCodeTableA = (waterActivity: Decimal, ph: Decimal | null): TableVerdict =>
  verdictOf(
    [
      [0.92, Infinity],
      [0.95, 5.6],
    ],
    4.6,
    waterActivity,
    ph,
  );

/** US Food Code, definition of TCS food, Table B: not heat-treated, or not packaged. */
export const foodCodeTableB = (waterActivity: Decimal, ph: Decimal | null): TableVerdict => {
  if (waterActivity.lessThan('0.88')) return 'stable';
  if (waterActivity.greaterThan('0.92')) {
    return ph?.lessThan('4.2') ? 'stable' : 'assess';
  }
  return verdictOf([[0.9, 5.0]], 4.6, waterActivity, ph);
};

/**
 * Regulation (EC) No 2073/2005, Annex I, footnote to 1.2 and 1.3 (from memory): growth of Listeria
 * monocytogenes is taken as not supported.
 */
export const listeriaNotSupported = (waterActivity: Decimal, ph: Decimal | null): boolean => {
  if (waterActivity.lessThanOrEqualTo('0.92')) return true;
  if (ph === null) return false;
  if (ph.lessThanOrEqualTo('4.4')) return true;
  return ph.lessThanOrEqualTo('5.0') && waterActivity.lessThanOrEqualTo('0.94');
};
