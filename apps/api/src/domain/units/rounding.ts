import { Decimal, sum } from './decimal';

/** Decimal places kept for grams (milligrams) and for counts in the ledger: NUMERIC(14,3). */
export const QUANTITY_PLACES = 3;
/** Decimal places kept for money in the ledger: NUMERIC(14,4). */
export const MONEY_PLACES = 4;
/** Decimal places of a price that a person pays. */
export const CENT_PLACES = 2;

/** Rounds half up, away from zero on a tie. The only rounding used for a single figure. */
export const roundTo = (value: Decimal, places: number): Decimal =>
  value.toDecimalPlaces(places, Decimal.ROUND_HALF_UP);

/**
 * Shares `total` over `weights` in steps of 10^-places so that the parts sum to `total` exactly
 * (largest remainder; a tie goes to the earlier part).
 * @throws RangeError when a weight is negative, when all are zero, or when `total` has more places.
 */
export const apportion = (
  total: Decimal,
  weights: readonly Decimal[],
  places: number,
): Decimal[] => {
  const weightSum = sum(weights);
  if (weights.some((weight) => weight.isNegative()) || weightSum.isZero()) {
    throw new RangeError('apportion needs weights that are not negative and not all zero');
  }
  if (!roundTo(total, places).equals(total)) {
    throw new RangeError(`apportion cannot share ${total.toString()} in steps of 1e-${places}`);
  }
  const step = new Decimal(10).pow(-places);
  const exact = weights.map((weight) => total.times(weight).dividedBy(weightSum));
  const parts = exact.map((value) => value.toDecimalPlaces(places, Decimal.ROUND_FLOOR));
  let missing = total.minus(sum(parts)).dividedBy(step).toNumber();
  const byRemainder = exact
    .map((value, index) => ({ index, remainder: value.minus(parts[index] ?? 0) }))
    .sort((a, b) => b.remainder.comparedTo(a.remainder) || a.index - b.index);
  for (const { index } of byRemainder) {
    if (missing <= 0) break;
    parts[index] = (parts[index] ?? step).plus(step);
    missing -= 1;
  }
  return parts;
};
