import { ok, refuse, type Result } from '../refusals/result';
import { Decimal } from '../units';
import type { PricingRefusal } from './refusals';
import { say } from '../words/say';

/**
 * Whole units to sell until what each leaves above its variable cost has paid the fixed cost:
 * fixed / (net price − variable cost), rounded up, because part of a box isn't sold.
 */
export const breakEvenUnits = (
  fixedCost: Decimal,
  netPrice: Decimal,
  variableCost: Decimal,
): Result<Decimal, PricingRefusal> => {
  const contribution = netPrice.minus(variableCost);
  if (!contribution.greaterThan(0)) {
    return refuse({
      code: 'never-breaks-even',
      detail: say`The net price doesn’t exceed the variable cost, so no quantity earns the fixed cost back. Raise the price or lower the cost.`,
      facts: { netPrice: netPrice.toString(), variableCost: variableCost.toString() },
    });
  }
  return ok(fixedCost.dividedBy(contribution).ceil());
};
