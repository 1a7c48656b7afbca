import { Decimal } from '../units';
import type { CavityVolumes } from './cavity';
import { say } from '../words/say';

/** Grams of the parts of one piece, unrounded. */
export interface PieceMasses {
  readonly shellG: Decimal;
  readonly fillingG: Decimal;
  readonly capG: Decimal;
  readonly pieceG: Decimal;
}

/** Grams from volumes. Densities in g/mL: measure the filling's with a cup of known volume. */
export const pieceMasses = (
  volumes: CavityVolumes,
  chocolateDensity: Decimal,
  fillingDensity: Decimal,
): PieceMasses => {
  const shellG = volumes.shellMl.times(chocolateDensity);
  const capG = volumes.capMl.times(chocolateDensity);
  const fillingG = volumes.fillingMl.times(fillingDensity);
  return { shellG, fillingG, capG, pieceG: shellG.plus(fillingG).plus(capG) };
};

/** Directive 2000/36/EC, Annex I A(7) and A(10): chocolate of the total weight, per cent. */
export const LEAST_CHOCOLATE_PERCENT = new Decimal(25);

export interface ChocolateShare {
  readonly chocolatePercent: Decimal;
  readonly enough: boolean;
  readonly reason: string;
  readonly caution: string;
}

/**
 * Share of chocolate in the total weight of a piece. Coloured cocoa butter counts in the total but
 * is no chocolate; chocolate inside the filling counts only for the name "a chocolate" (A(10)), so
 * the caller decides what it passes as `chocolateG`.
 */
export const chocolateShare = (chocolateG: Decimal, totalG: Decimal): ChocolateShare => {
  const chocolatePercent = totalG.isZero()
    ? new Decimal(0)
    : chocolateG.times(100).dividedBy(totalG);
  const enough = chocolatePercent.greaterThanOrEqualTo(LEAST_CHOCOLATE_PERCENT);
  const shown = chocolatePercent.toFixed(2);
  return {
    chocolatePercent,
    enough,
    reason: enough
      ? say`Chocolate is ${shown} % of the total weight; a filled chocolate needs at least 25 %.`
      : say`Chocolate is only ${shown} % of the total weight; under 25 % the piece may not be sold as a filled chocolate. Make the shell thicker or take another sale name.`,
    caution: say`Computed from stated or weighed parts (Directive 2000/36/EC, Annex I). Confirm with weighings of ten; the local authority decides on names.`,
  };
};
