import { ok, refuse, type Result } from '../refusals/result';
import { Decimal } from '../units';
import type { PricingRefusal } from './refusals';
import { say } from '../words/say';

const HUNDRED = new Decimal(100);

/**
 * Two targets that are often taken for each other. A margin is a part of the price, a mark-up is
 * laid on the cost: 60 % margin is 150 % mark-up. Prices here are net of VAT.
 */
export type PriceTarget =
  | { readonly kind: 'margin'; readonly percent: Decimal }
  | { readonly kind: 'mark_up'; readonly percent: Decimal };

/** Margin in per cent of the net price; undefined when the price is zero. */
export const marginPercent = (netPrice: Decimal, cost: Decimal): Decimal | undefined =>
  netPrice.isZero() ? undefined : netPrice.minus(cost).dividedBy(netPrice).times(HUNDRED);

/** Mark-up in per cent of the cost; undefined when the cost is zero. */
export const markUpPercent = (netPrice: Decimal, cost: Decimal): Decimal | undefined =>
  cost.isZero() ? undefined : netPrice.minus(cost).dividedBy(cost).times(HUNDRED);

/** u = m / (1 − m). */
export const markUpOfMargin = (margin: Decimal): Result<Decimal, PricingRefusal> =>
  margin.greaterThanOrEqualTo(HUNDRED)
    ? outOfRange(margin)
    : ok(margin.dividedBy(HUNDRED.minus(margin)).times(HUNDRED));

/** m = u / (1 + u). */
export const marginOfMarkUp = (markUp: Decimal): Result<Decimal, PricingRefusal> =>
  markUp.lessThanOrEqualTo(HUNDRED.negated())
    ? outOfRange(markUp)
    : ok(markUp.dividedBy(HUNDRED.plus(markUp)).times(HUNDRED));

/** Net price, not rounded, that reaches the target exactly. */
export const netPriceFor = (
  cost: Decimal,
  target: PriceTarget,
): Result<Decimal, PricingRefusal> => {
  if (target.kind === 'margin') {
    if (target.percent.greaterThanOrEqualTo(HUNDRED)) return outOfRange(target.percent);
    return ok(cost.times(HUNDRED).dividedBy(HUNDRED.minus(target.percent)));
  }
  if (target.percent.lessThanOrEqualTo(HUNDRED.negated())) return outOfRange(target.percent);
  return ok(cost.times(HUNDRED.plus(target.percent)).dividedBy(HUNDRED));
};

const outOfRange = (percent: Decimal): Result<never, PricingRefusal> =>
  refuse({
    code: 'margin-out-of-range',
    detail: say`A margin is below 100 % of the price and a mark-up above −100 % of the cost. If more than the cost is to be added, state a mark-up.`,
    facts: { percent: percent.toString() },
  });
