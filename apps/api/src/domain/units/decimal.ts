import DecimalJs from 'decimal.js';

/**
 * The one exact-decimal class of the domain. Forty significant digits leave room for every product
 * of a quantity (14 digits) and a price (14 digits); division is rounded half up at that precision
 * and only ever rounded again at the edge, by a named policy of `rounding.ts`.
 */
export const Decimal = DecimalJs.clone({
  precision: 40,
  rounding: DecimalJs.ROUND_HALF_UP,
  toExpNeg: -30,
  toExpPos: 30,
});
export type Decimal = DecimalJs;

export const ZERO: Decimal = new Decimal(0);

export const sum = (values: Iterable<Decimal>): Decimal => {
  let total = ZERO;
  for (const value of values) total = total.plus(value);
  return total;
};
