import { ok, refuse, type Refused, type Result } from '../refusals/result';
import { Decimal, MONEY_PLACES, ZERO, roundTo, sum } from '../units';
import { say } from '../words/say';

/** A receipt, or a use, of one item in the order in which they happened. */
export type StockEvent =
  | { readonly kind: 'received'; readonly quantity: Decimal; readonly price: Decimal }
  | { readonly kind: 'used'; readonly quantity: Decimal };

export interface Valuation {
  readonly usedCost: Decimal;
  readonly leftQuantity: Decimal;
  readonly leftValue: Decimal;
}

export type StockValueRefusal = Refused & { readonly code: 'used-more-than-received' };

interface Layer {
  readonly quantity: Decimal;
  readonly cost: Decimal;
}

/**
 * Cost of what was used when the lot that came first is used first. This is how batches are costed:
 * a scanned lot's own price is known. The rest of a layer takes the rest of its money.
 */
export const valueByLot = (events: readonly StockEvent[]): Result<Valuation, StockValueRefusal> => {
  const layers: Layer[] = [];
  let usedCost = ZERO;
  for (const event of events) {
    if (event.kind === 'received') {
      layers.push({ quantity: event.quantity, cost: event.price });
      continue;
    }
    let wanted = event.quantity;
    while (wanted.greaterThan(0)) {
      const first = layers[0];
      if (!first) return usedTooMuch();
      const taken = Decimal.min(wanted, first.quantity);
      const cost = taken.equals(first.quantity)
        ? first.cost
        : roundTo(first.cost.times(taken).dividedBy(first.quantity), MONEY_PLACES);
      usedCost = usedCost.plus(cost);
      wanted = wanted.minus(taken);
      if (taken.equals(first.quantity)) layers.shift();
      else layers[0] = { quantity: first.quantity.minus(taken), cost: first.cost.minus(cost) };
    }
  }
  return ok({
    usedCost,
    leftQuantity: sum(layers.map(({ quantity }) => quantity)),
    leftValue: sum(layers.map(({ cost }) => cost)),
  });
};

/**
 * Cost of what was used at the moving average: for planning of prices only. Both ways are sound;
 * one report never mixes them.
 */
export const valueByAverage = (
  events: readonly StockEvent[],
): Result<Valuation, StockValueRefusal> => {
  let [quantity, value, usedCost] = [ZERO, ZERO, ZERO];
  for (const event of events) {
    if (event.kind === 'received') {
      quantity = quantity.plus(event.quantity);
      value = value.plus(event.price);
      continue;
    }
    if (event.quantity.greaterThan(quantity)) return usedTooMuch();
    if (event.quantity.isZero()) continue;
    const cost = value.times(event.quantity).dividedBy(quantity);
    quantity = quantity.minus(event.quantity);
    value = value.minus(cost);
    usedCost = usedCost.plus(cost);
  }
  return ok({ usedCost, leftQuantity: quantity, leftValue: value });
};

const usedTooMuch = (): Result<never, StockValueRefusal> =>
  refuse({
    code: 'used-more-than-received',
    detail: say`More was used than had been received. Look for a delivery that was not booked.`,
  });
