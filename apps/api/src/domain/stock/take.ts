import { ok, refuse, type Result } from '../refusals/result';
import { type Decimal, MONEY_PLACES, QUANTITY_PLACES, roundTo } from '../units';
import type { StockRefusal } from './refusals';
import { say } from '../words/say';

export type StockUnit = 'g' | 'pc';

/** A quantity of a lot with the weight and the cost that go with it. */
export interface StockShare {
  /** In the lot's unit. */
  readonly quantity: Decimal;
  /** Grams of food; zero for packaging. */
  readonly massG: Decimal;
  /** Workshop's currency. */
  readonly cost: Decimal;
}

export interface LotOnHand {
  readonly code: string;
  readonly unit: StockUnit;
  readonly onHand: StockShare;
}

/** "120 g" or "12 pieces", for sentences. */
export const quantityInWords = (quantity: Decimal, unit: StockUnit): string => {
  if (unit === 'g') return `${quantity.toFixed()} g`;
  return quantity.equals(1) ? say`1 piece` : say`${quantity.toFixed()} pieces`;
};

/** Pieces are whole, and nothing is taken or made in a quantity of nought. */
export const checkQuantity = (
  what: string,
  unit: StockUnit,
  quantity: Decimal,
): Result<Decimal, StockRefusal> => {
  const facts = { what, quantity: quantity.toFixed() };
  if (!quantity.greaterThan(0)) {
    return refuse({
      code: 'quantity-not-positive',
      detail: say`A quantity of ${what} must be more than nought.`,
      facts,
    });
  }
  if (unit === 'pc' && !quantity.isInteger()) {
    return refuse({
      code: 'pieces-not-whole',
      detail: say`Give a whole number of ${what}: it is kept by the piece.`,
      facts,
    });
  }
  return ok(quantity);
};

/**
 * The share of weight and cost that leaves a lot with a quantity: its part of what is on hand,
 * rounded once to the milligram and to a ten-thousandth of the currency. Taking all that is left
 * takes all of the weight and the cost, so that an empty lot holds neither.
 */
export const shareOf = (onHand: StockShare, quantity: Decimal): StockShare => {
  if (quantity.equals(onHand.quantity)) return onHand;
  const part = quantity.dividedBy(onHand.quantity);
  return {
    quantity,
    massG: roundTo(onHand.massG.times(part), QUANTITY_PLACES),
    cost: roundTo(onHand.cost.times(part), MONEY_PLACES),
  };
};

/** `shareOf`, after refusing what isn't there. */
export const take = (lot: LotOnHand, quantity: Decimal): Result<StockShare, StockRefusal> => {
  const checked = checkQuantity(say`lot ${lot.code}`, lot.unit, quantity);
  if (!checked.ok) return checked;
  if (quantity.greaterThan(lot.onHand.quantity)) {
    const left = quantityInWords(lot.onHand.quantity, lot.unit);
    const asked = quantityInWords(quantity, lot.unit);
    return refuse({
      code: 'not-enough-on-hand',
      detail: say`Only ${left} of lot ${lot.code} left, but ${asked} asked for. Take less, take the rest from another lot, or count the lot if there is more on the shelf.`,
      facts: {
        lotCode: lot.code,
        onHand: lot.onHand.quantity.toFixed(),
        asked: quantity.toFixed(),
        unit: lot.unit,
      },
    });
  }
  return ok(shareOf(lot.onHand, quantity));
};
