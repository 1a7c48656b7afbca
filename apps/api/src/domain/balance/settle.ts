import { FRACTION_BITS, WHOLE } from '../provenance/fixed-point';

/** Truncation of the shares' walk stays far below 2^-200 mg; what is under it is no difference. */
export const NOTHING = 1n << (FRACTION_BITS - 200n);

export const nearestMg = (exact: bigint): bigint =>
  (exact + (WHOLE >> 1n) + NOTHING) >> FRACTION_BITS;

/** Whole milligrams near the exact figures that sum to `totalMg`: largest remainder first. */
export const settle = (exact: readonly bigint[], totalMg: bigint): bigint[] => {
  const floors = exact.map((value) => (value + NOTHING) >> FRACTION_BITS);
  let missing = totalMg - floors.reduce((running, value) => running + value, 0n);
  const byRemainder = exact
    .map((value, index) => ({ index, rest: value - ((floors[index] ?? 0n) << FRACTION_BITS) }))
    .sort((a, b) => (a.rest === b.rest ? a.index - b.index : a.rest > b.rest ? -1 : 1));
  for (const { index } of byRemainder) {
    if (missing <= 0n) break;
    floors[index] = (floors[index] ?? 0n) + 1n;
    missing -= 1n;
  }
  return floors;
};
