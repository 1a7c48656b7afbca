import { ok, refuse, type Result } from '../refusals/result';
import { Decimal } from '../units';
import type { ScalingRefusal } from './refusals';
import { say } from '../words/say';

/** Losses by weight, and losses by the piece. */
export type LossKind = 'steam' | 'held_back' | 'scrapings' | 'rejects' | 'samples' | 'other';

/** An expected loss: `percent` of what goes into the step. */
export interface StepLoss {
  readonly step: string;
  readonly kind: LossKind;
  readonly percent: Decimal;
  /** Roles of lines that pass through the step (`filling`, `shell` …); absent: every line. */
  readonly roles?: readonly string[];
  /** Acts after this line (counted from 1) of a recipe kept by weight; absent: after the last. */
  readonly afterLine?: number;
  /** For `held_back`: grams of liquid kept per gram of strained solids, in place of the per cent. */
  readonly retentionRatio?: Decimal;
}

/** Rejects and samples leave as whole pieces; every other kind leaves as grams. */
export const isLostByPiece = (loss: StepLoss): boolean =>
  loss.kind === 'rejects' || loss.kind === 'samples';

/**
 * What is left of 1 after all the losses: yields multiply, they never add. A need is divided by this
 * ratio; multiplying it by 1 + loss falls short (3 % loss needs input ÷ 0.97, not × 1.03).
 */
export const yieldRatio = (losses: readonly StepLoss[]): Result<Decimal, ScalingRefusal> => {
  let ratio = new Decimal(1);
  for (const loss of losses) {
    if (loss.percent.isNegative() || loss.percent.greaterThanOrEqualTo(100)) {
      return refuse({
        code: 'step-loses-everything',
        detail: say`Step “${loss.step}” loses ${loss.percent.toString()} %. Give 0 to under 100 %.`,
        facts: { step: loss.step },
      });
    }
    ratio = ratio.times(new Decimal(100).minus(loss.percent)).dividedBy(100);
  }
  return ok(ratio);
};

/** Losses by weight that a line of this role passes through. */
export const weightLossesOf = (losses: readonly StepLoss[], role: string): StepLoss[] =>
  losses.filter((loss) => !isLostByPiece(loss) && (!loss.roles || loss.roles.includes(role)));

export interface CarriedStep {
  readonly step: string;
  readonly into: Decimal;
  readonly out: Decimal;
  readonly lost: Decimal;
}

/** A quantity carried forward through its steps, for the bench sheet. */
export const carryThrough = (quantity: Decimal, losses: readonly StepLoss[]): CarriedStep[] => {
  let into = quantity;
  return losses.map((loss) => {
    const lost = into.times(loss.percent).dividedBy(100);
    const carried = { step: loss.step, into, out: into.minus(lost), lost };
    into = carried.out;
    return carried;
  });
};
