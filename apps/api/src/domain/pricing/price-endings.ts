import { ok, refuse, type Result } from '../refusals/result';
import { Decimal, ZERO } from '../units';
import type { PricingRefusal } from './refusals';
import { say } from '../words/say';

/** Prices that a counter likes to show, as `0.90` and `0.50` on each whole unit of money. */
export interface EndingRule {
  /** Each from 0 up to below `step`. */
  readonly endings: readonly Decimal[];
  /** Endings repeat in steps of this; usually 1.00. */
  readonly step: Decimal;
  readonly direction: 'up' | 'down' | 'nearest';
}

/**
 * The price with one of the wished endings that the rule picks. `up` never gives margin away;
 * `nearest` takes the higher of two that are equally near; a price is never rounded to zero.
 */
export const priceWithEnding = (
  price: Decimal,
  rule: EndingRule,
): Result<Decimal, PricingRefusal> => {
  const usable =
    rule.step.greaterThan(0) &&
    rule.endings.length > 0 &&
    rule.endings.every((ending) => !ending.isNegative() && ending.lessThan(rule.step));
  if (!usable) return unusable();
  const whole = price.dividedBy(rule.step).floor().times(rule.step);
  const candidates = [-1, 0, 1]
    .flatMap((steps) =>
      rule.endings.map((ending) => whole.plus(rule.step.times(steps)).plus(ending)),
    )
    .filter((candidate) => candidate.greaterThan(ZERO))
    .sort((a, b) => a.comparedTo(b));
  const above = candidates.find((candidate) => candidate.greaterThanOrEqualTo(price));
  const below = candidates.filter((candidate) => candidate.lessThanOrEqualTo(price)).at(-1);
  if (!above) return unusable();
  if (!below || rule.direction === 'up') return ok(above);
  if (rule.direction === 'down') return ok(below);
  return ok(above.minus(price).greaterThan(price.minus(below)) ? below : above);
};

const unusable = (): Result<never, PricingRefusal> =>
  refuse({
    code: 'price-endings-unusable',
    detail: say`A rule for price endings needs a step above zero and endings from zero to below it.`,
  });
