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
  /** Pieces of one serving; 0 when it is a package or a part of one. */
  readonly pieces: number;
  /** As `1 package` or `1/3 package`, where there are no pieces to count. */
  readonly measure?: string;
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

/** Parts of a package that 21 CFR 101.9(b)(5) lets a household measure name (from memory). */
const PARTS = [2, 3, 4, 5, 6, 8, 10, 12, 16] as const;

/** A package without pieces, as a bar: the part of it nearest the reference amount. */
const servingOfPart = (netG: Decimal, kind: CandyKind): Serving => {
  const away = (part: number): Decimal =>
    netG.dividedBy(part).minus(REFERENCE_AMOUNTS_G[kind]).abs();
  const part = PARTS.reduce<number>((a, b) => (away(b).lessThan(away(a)) ? b : a), PARTS[0]);
  return { pieces: 0, measure: `1/${part} package`, grams: netG.dividedBy(part) };
};

export interface PackedFood {
  readonly netG: Decimal;
  /** Weight of one piece; null for a bar or a bag of many small ones. */
  readonly pieceG: Decimal | null;
  readonly kind: CandyKind;
  readonly preferMore: boolean;
}

/** The serving of a package that is sold singly, and whether it shows a column of its own. */
export const servingOf = (food: PackedFood): { serving: Serving; dualColumn: boolean } => {
  const { netG, kind, preferMore } = food;
  const pieceG = food.pieceG?.greaterThan(0) ? food.pieceG : null;
  const size = servingOfPackage(netG, kind);
  if (size === 'one_serving') {
    const pieces = pieceG ? roundTo(netG.dividedBy(pieceG), 0).toNumber() : 0;
    const measure = pieces > 0 ? {} : { measure: '1 package' };
    return { serving: { pieces, ...measure, grams: netG }, dualColumn: false };
  }
  const serving = pieceG ? servingOfPieces(pieceG, kind, preferMore) : servingOfPart(netG, kind);
  return { serving, dualColumn: size === 'dual_column' };
};

/** "about 8", by 101.9(b)(8): halves between two and five, whole numbers above. */
export const servingsPerContainer = (netG: Decimal, servingG: Decimal): string => {
  const exact = netG.dividedBy(servingG);
  const fine = exact.greaterThanOrEqualTo(2) && exact.lessThanOrEqualTo(5);
  const rounded = fine ? roundTo(exact.times(2), 0).dividedBy(2) : roundTo(exact, 0);
  const shown = rounded.lessThan(1) ? new Decimal(1) : rounded;
  return `${shown.equals(exact) ? '' : 'about '}${shown.toString()}`;
};
