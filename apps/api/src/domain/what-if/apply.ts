import type { CostBasis, RecipeFacts } from '../costing';
import type { VatRate } from '../pricing';
import { Decimal } from '../units';

/** One thing that could be otherwise. `items` and `roles` absent: all of them. */
export type Change =
  | { readonly kind: 'ingredient'; readonly items: readonly string[]; readonly percent: Decimal }
  | { readonly kind: 'ingredient_price'; readonly item: string; readonly amount: Decimal }
  | { readonly kind: 'wage'; readonly roles?: readonly string[]; readonly percent: Decimal }
  | {
      readonly kind: 'loss';
      readonly items?: readonly string[];
      /** Percentage points of what goes in that are wasted on top (below zero: fewer). */
      readonly points: Decimal;
    }
  | { readonly kind: 'vat'; readonly productClass: string; readonly ratePercent: Decimal };

export interface WhatIfBasis {
  readonly costs: CostBasis;
  readonly vat: readonly VatRate[];
}

const byPercent = (amount: Decimal, percent: Decimal): Decimal =>
  amount.times(percent.plus(100)).dividedBy(100);

/** A basis with the changes in it, in their order. What was given isn't touched. */
export const applyChanges = (basis: WhatIfBasis, changes: readonly Change[]): WhatIfBasis =>
  changes.reduce(applyChange, basis);

const applyChange = (basis: WhatIfBasis, change: Change): WhatIfBasis => {
  switch (change.kind) {
    case 'ingredient':
    case 'ingredient_price':
      return { ...basis, costs: { ...basis.costs, prices: changedPrices(basis.costs, change) } };
    case 'wage': {
      const rates = basis.costs.rates.map((rate) =>
        change.roles === undefined || change.roles.includes(rate.role)
          ? { ...rate, ratePerHour: byPercent(rate.ratePerHour, change.percent) }
          : rate,
      );
      return { ...basis, costs: { ...basis.costs, rates } };
    }
    case 'loss': {
      const recipes = new Map(
        [...basis.costs.recipes].map(([item, recipe]): [string, RecipeFacts] => [
          item,
          change.items === undefined || change.items.includes(item)
            ? withLoss(recipe, change.points)
            : recipe,
        ]),
      );
      return { ...basis, costs: { ...basis.costs, recipes } };
    }
    case 'vat': {
      const { productClass, ratePercent } = change;
      const fromDay = basis.costs.day;
      const others = basis.vat.filter((rate) => rate.productClass !== productClass);
      return { ...basis, vat: [...others, { productClass, ratePercent, fromDay }] };
    }
  }
};

const changedPrices = (
  costs: CostBasis,
  change: Extract<Change, { kind: 'ingredient' | 'ingredient_price' }>,
): CostBasis['prices'] => {
  const prices = new Map(costs.prices);
  const items = change.kind === 'ingredient' ? change.items : [change.item];
  for (const item of items) {
    const price = prices.get(item);
    if (!price) continue;
    const amount =
      change.kind === 'ingredient' ? byPercent(price.amount, change.percent) : change.amount;
    prices.set(item, { ...price, amount });
  }
  return prices;
};

/** Wastes so many points more of what goes in: less comes out good, for the same lines. */
const withLoss = (recipe: RecipeFacts, points: Decimal): RecipeFacts => {
  const kept = new Decimal(100).minus(points).dividedBy(100);
  const wasteOf = (before: Decimal): Decimal =>
    Decimal.max(0, new Decimal(1).minus(new Decimal(1).minus(before).times(kept)));
  return {
    ...recipe,
    goodYield: recipe.goodYield.times(kept),
    lines: recipe.lines.map((line) => ({ ...line, wasteRatio: wasteOf(line.wasteRatio) })),
  };
};
