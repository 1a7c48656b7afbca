import { inForce, type FromDay } from '../calendar/in-force';
import { ok, refuse, type Result } from '../refusals/result';
import { Decimal, sum } from '../units';
import type { CostEntry } from './cost-entries';
import type { CostingRefusal } from './refusals';
import { named, say } from '../words/say';

export const MINUTES_PER_HOUR = 60;

export interface LabourRate extends FromDay {
  readonly role: string;
  /** Money per hour, employer's cost included. */
  readonly ratePerHour: Decimal;
}

export interface Labour {
  readonly role: string;
  readonly minutes: Decimal;
}

/** How rent, power and the rest are laid on what is made. One rule for the whole workshop. */
export type OverheadRule =
  | { readonly kind: 'per_hour'; readonly ratePerHour: Decimal }
  | { readonly kind: 'per_piece'; readonly amountPerPiece: Decimal }
  | { readonly kind: 'percent'; readonly percent: Decimal };

/** What a step of making adds of its own; what its made components bear already isn't in here. */
export interface OverheadBase {
  readonly minutes: Decimal;
  /** Good pieces that the step made; zero for a filling and for a box, whose pieces bear theirs. */
  readonly pieces: Decimal;
  /** Bought material, packaging and labour of this step. */
  readonly directCost: Decimal;
}

export const labourCost = (
  labour: readonly Labour[],
  rates: readonly LabourRate[],
  day: string,
): Result<CostEntry[], CostingRefusal> => {
  const entries: CostEntry[] = [];
  for (const { role, minutes } of labour) {
    if (minutes.isZero()) continue;
    const rate = inForce(
      rates.filter((candidate) => candidate.role === role),
      day,
    );
    if (!rate) {
      return refuse({
        code: 'labour-rate-missing',
        detail: say`No hourly rate for the role ${named(role)} holds on ${day}. Set one under Workshop.`,
        facts: { role, day },
      });
    }
    const amount = minutes.times(rate.ratePerHour).dividedBy(MINUTES_PER_HOUR);
    entries.push({ category: 'labour', part: role, source: role, amount });
  }
  return ok(entries);
};

export const totalMinutes = (labour: readonly Labour[]): Decimal =>
  sum(labour.map(({ minutes }) => minutes));

const overheadAmount = (rule: OverheadRule, base: OverheadBase): Decimal => {
  switch (rule.kind) {
    case 'per_hour':
      return rule.ratePerHour.times(base.minutes).dividedBy(MINUTES_PER_HOUR);
    case 'per_piece':
      return rule.amountPerPiece.times(base.pieces);
    case 'percent':
      return rule.percent.times(base.directCost).dividedBy(100);
  }
};

/**
 * Laid on each step of making for what that step adds. All three rules are linear, so a box bears
 * the same overhead whether it is reckoned step by step or as a whole.
 */
export const overheadCost = (rule: OverheadRule, base: OverheadBase): CostEntry[] => {
  const amount = overheadAmount(rule, base);
  if (amount.isZero()) return [];
  return [{ category: 'overhead', part: rule.kind, source: rule.kind, amount }];
};
