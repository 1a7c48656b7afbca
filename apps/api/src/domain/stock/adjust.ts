import { ok, refuse, type Result } from '../refusals/result';
import { type Decimal, MONEY_PLACES, QUANTITY_PLACES, roundTo } from '../units';
import type { StockRefusal } from './refusals';
import { checkQuantity, type LotOnHand, type StockShare, take } from './take';
import { say } from '../words/say';

const negated = (share: StockShare): StockShare => ({
  quantity: share.quantity.negated(),
  massG: share.massG.negated(),
  cost: share.cost.negated(),
});

/** What leaves a lot without going into a batch: wasted or sampled. Signed as a movement. */
export const removal = (lot: LotOnHand, quantity: Decimal): Result<StockShare, StockRefusal> => {
  const taken = take(lot, quantity);
  return taken.ok ? ok(negated(taken.value)) : taken;
};

/**
 * The difference that a count finds, signed as a movement; weight and cost in the proportion of
 * what is on hand. An empty lot has no proportion left: what is found then weighs as one that was
 * made, and costs nothing, because its cost was spent.
 * @param made the lot's quantity and grams when it was made
 */
export const countDifference = (
  lot: LotOnHand,
  counted: Decimal,
  made: { readonly quantity: Decimal; readonly massG: Decimal },
): Result<StockShare | null, StockRefusal> => {
  const difference = counted.minus(lot.onHand.quantity);
  if (counted.isNegative()) {
    return refuse({
      code: 'quantity-not-positive',
      detail: say`Lot ${lot.code} can't be counted as less than nought.`,
      facts: { lotCode: lot.code },
    });
  }
  if (difference.isZero()) return ok(null);
  if (difference.isNegative()) return removal(lot, difference.negated());
  const whole = checkQuantity(lot.code, lot.unit, difference);
  if (!whole.ok) return whole;
  const { quantity, massG, cost } = lot.onHand;
  const empty = quantity.isZero();
  const massPerUnit = empty
    ? made.massG.dividedBy(made.quantity.isZero() ? 1 : made.quantity)
    : massG.dividedBy(quantity);
  return ok({
    quantity: difference,
    massG: roundTo(difference.times(massPerUnit), QUANTITY_PLACES),
    cost: empty ? cost : roundTo(difference.times(cost.dividedBy(quantity)), MONEY_PLACES),
  });
};
