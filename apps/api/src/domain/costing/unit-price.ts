import { ok, refuse, type Result } from '../refusals/result';
import { Decimal } from '../units';
import type { CostEntry } from './cost-entries';
import type { CostingRefusal } from './refusals';
import { say } from '../words/say';

export const GRAMS_PER_KG = 1000;

/** What an item costs to buy, net of VAT. */
export interface UnitPrice {
  readonly amount: Decimal;
  readonly per: 'kg' | 'pc';
}

/** Cost of so many grams (price per kg) or pieces (price per piece). */
export const atPrice = (price: UnitPrice, quantity: Decimal): Decimal => {
  const cost = price.amount.times(quantity);
  return price.per === 'kg' ? cost.dividedBy(GRAMS_PER_KG) : cost;
};

export const priceOf = (
  item: string,
  quantity: Decimal,
  prices: ReadonlyMap<string, UnitPrice>,
): Result<CostEntry[], CostingRefusal> => {
  const price = prices.get(item);
  if (!price) {
    return refuse({
      code: 'purchase-price-missing',
      detail: say`${item} has neither a recipe nor a purchase price. A missing price is not free: enter one.`,
      facts: { item },
    });
  }
  return ok([
    { category: 'material', part: 'base', source: item, amount: atPrice(price, quantity) },
  ]);
};
