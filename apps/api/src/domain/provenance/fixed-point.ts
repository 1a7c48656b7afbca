import { Decimal } from '../units';

/**
 * Shares are fixed-point whole numbers with this many binary places. One division loses less than
 * one unit of the last place, so a graph of a million draws errs by less than 2^-300 of the whole,
 * and a milligram figure of any lot below 10^11 g by less than 2^-250.
 */
export const FRACTION_BITS = 320n;

/** The whole of a lot, as a share. */
export const WHOLE = 1n << FRACTION_BITS;

/**
 * A figure nearer than 2^-200 mg to a half milligram is a tie. The margin is far above the error of
 * the walk, so an exact tie that the walk misses by its last place is still rounded as a tie.
 */
const TIE_MARGIN = 1n << (FRACTION_BITS - 200n);

const MG_PER_G = 1000;

/** @throws RangeError when the weight isn't a whole number of milligrams (NUMERIC(14,3)). */
export const toMilligrams = (massG: Decimal): bigint => {
  const mg = massG.times(MG_PER_G);
  if (!mg.isInteger()) {
    throw new RangeError(`${massG.toString()} g is not a whole number of milligrams`);
  }
  return BigInt(mg.toFixed(0));
};

export const fromMilligrams = (mg: bigint): Decimal =>
  new Decimal(mg.toString()).dividedBy(MG_PER_G);

/** The part of a weight that a share stands for, half up to the milligram. */
export const milligramsOf = (share: bigint, wholeMg: bigint): bigint =>
  (share * wholeMg + (WHOLE >> 1n) + TIE_MARGIN) >> FRACTION_BITS;

export const gramsOf = (share: bigint, wholeG: Decimal): Decimal =>
  fromMilligrams(milligramsOf(share, toMilligrams(wholeG)));

/** A share as text with nine places, for lists too long for decimals: rounded down. */
export const ratioText = (share: bigint): string => {
  const digits = ((share * 1_000_000_000n + TIE_MARGIN) >> FRACTION_BITS)
    .toString()
    .padStart(10, '0');
  return `${digits.slice(0, -9)}.${digits.slice(-9)}`;
};

/** Grams with three places, as JSON carries them. */
export const gramsText = (mg: bigint): string => {
  const digits = (mg < 0n ? -mg : mg).toString().padStart(4, '0');
  return `${mg < 0n ? '-' : ''}${digits.slice(0, -3)}.${digits.slice(-3)}`;
};

/** A share as a decimal ratio of 40 significant digits, for ranking and for apportioning. */
export const ratioOf = (share: bigint): Decimal =>
  new Decimal(share.toString()).dividedBy(WHOLE.toString());
