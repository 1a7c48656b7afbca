import { ok, refuse, type Result } from '../refusals/result';
import { Decimal, roundTo } from '../units';
import type { ScalingRefusal } from './refusals';
import { say, type Sentence } from '../words/say';

/** `pieces` are good pieces (or boxes) after every loss; `trays` are whole trays cast. */
export type ScalingTarget =
  | { readonly kind: 'grams'; readonly massG: Decimal }
  | { readonly kind: 'pieces'; readonly pieces: Decimal }
  | { readonly kind: 'trays'; readonly trays: number };

export interface PieceCount {
  readonly pieces: Decimal;
  readonly trays: number | null;
}

/**
 * Pieces to make before rejects: good pieces divided by their yield, rounded up, and up again to
 * whole trays.
 */
export const piecesToMake = (
  perTray: number | null,
  target: ScalingTarget,
  goodRatio: Decimal,
): Result<PieceCount, ScalingRefusal> => {
  if (target.kind === 'trays') {
    if (perTray === null || !Number.isInteger(target.trays) || target.trays < 1) {
      return unfit(say`Whole trays can be asked for only when the recipe names a mould.`);
    }
    return ok({ pieces: new Decimal(perTray).times(target.trays), trays: target.trays });
  }
  if (target.kind !== 'pieces' || !target.pieces.isInteger() || !target.pieces.greaterThan(0)) {
    return unfit(say`This recipe is kept by the piece: ask for a whole number of pieces or trays.`);
  }
  // A remainder under a millionth is the rounding of the division, not a piece.
  const filled = roundTo(target.pieces.dividedBy(goodRatio), 6).ceil();
  if (perTray === null) return ok({ pieces: filled, trays: null });
  const trays = filled.dividedBy(perTray).ceil();
  return ok({ pieces: trays.times(perTray), trays: trays.toNumber() });
};

export const unfit = (detail: Sentence): Result<never, ScalingRefusal> =>
  refuse({ code: 'scaling-target-unfit', detail });
