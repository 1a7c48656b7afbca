import { Decimal, roundTo } from '../units';

/** Reference amounts of 21 CFR 101.12(b) for confectionery, grams. */
export const REFERENCE_AMOUNTS_G = {
  candy: 30,
  hard_candy: 15,
  baking_candy: 15,
  after_dinner: 10,
  marshmallow: 30,
} as const;
export type CandyKind = keyof typeof REFERENCE_AMOUNTS_G;

export interface Serving {
  readonly pieces: number;
  readonly grams: Decimal;
}

/**
 * Serving of loose pieces, 21 CFR 101.9(b)(2)(i) (from memory): the whole number nearest the
 * reference amount; pieces between a half and two thirds of it may be one or two; bigger ones are
 * one. A tie, and the choice of one or two, go to `preferMore`, a setting.
 */
export const servingOfPieces = (pieceG: Decimal, kind: CandyKind, preferMore: boolean): Serving => {
  const ratio = new Decimal(REFERENCE_AMOUNTS_G[kind]).dividedBy(pieceG);
  const share = pieceG.dividedBy(REFERENCE_AMOUNTS_G[kind]);
  const pieces = piecesFor(ratio, share, preferMore);
  return { pieces, grams: pieceG.times(pieces) };
};

const piecesFor = (ratio: Decimal, share: Decimal, preferMore: boolean): number => {
  if (share.greaterThanOrEqualTo('0.67')) return 1;
  if (share.greaterThan('0.5')) return preferMore ? 2 : 1;
  const mode = preferMore ? Decimal.ROUND_HALF_UP : Decimal.ROUND_HALF_DOWN;
  return ratio.toDecimalPlaces(0, mode).toNumber();
};

export type PackageServing = 'one_serving' | 'dual_column' | 'several';

/** A package that is sold singly: under twice the reference amount it is one serving. */
export const servingOfPackage = (netG: Decimal, kind: CandyKind): PackageServing => {
  const share = netG.dividedBy(REFERENCE_AMOUNTS_G[kind]);
  if (share.lessThan(2)) return 'one_serving';
  return share.lessThanOrEqualTo(3) ? 'dual_column' : 'several';
};

/** "about 8", by 101.9(b)(8): halves between two and five, whole numbers above. */
export const servingsPerContainer = (netG: Decimal, servingG: Decimal): string => {
  const exact = netG.dividedBy(servingG);
  const fine = exact.greaterThanOrEqualTo(2) && exact.lessThanOrEqualTo(5);
  const rounded = fine ? roundTo(exact.times(2), 0).dividedBy(2) : roundTo(exact, 0);
  const shown = rounded.lessThan(1) ? new Decimal(1) : rounded;
  return `${shown.equals(exact) ? '' : 'about '}${shown.toString()}`;
};
