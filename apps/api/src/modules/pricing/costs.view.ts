import {
  GRAMS_PER_KG,
  scaleCost,
  totalCost,
  waterfall,
  type CostEntry,
} from '../../domain/costing';
import { Decimal } from '../../domain/units';
import type { Item } from '../../generated/prisma/client';
import { moneyText } from '../../platform/database/decimals';
import type { CostSourceView, CostStepView, ItemCostView } from './costs.dto';

const centText = (amount: Decimal): string => amount.toFixed(2);

/** What a person thinks in: a kg of what is weighed, one of what is counted. */
export const perOf = (unit: string): { readonly per: 'kg' | 'pc'; readonly factor: Decimal } =>
  unit === 'g'
    ? { per: 'kg', factor: new Decimal(GRAMS_PER_KG) }
    : { per: 'pc', factor: new Decimal(1) };

export const stepsView = (entries: readonly CostEntry[]): CostStepView[] =>
  waterfall(entries).steps.map(({ category, part, amount, from, to }) => ({
    category,
    part,
    amount: centText(amount),
    from: centText(from),
    to: centText(to),
  }));

const sourceView = (entry: CostEntry, items: ReadonlyMap<string, Item>): CostSourceView => ({
  category: entry.category,
  part: entry.part,
  source: items.get(entry.source)?.name ?? entry.source,
  amount: moneyText(entry.amount),
});

/** @param unitCost of one gram or one piece */
export const itemCostView = (
  item: Item,
  unitCost: readonly CostEntry[],
  on: string,
  items: ReadonlyMap<string, Item>,
): ItemCostView => {
  const { per, factor } = perOf(item.unit);
  const entries = scaleCost(unitCost, factor);
  return {
    itemId: item.id,
    itemName: item.name,
    per,
    on,
    cost: moneyText(totalCost(entries)),
    waterfall: stepsView(entries),
    sources: entries.map((entry) => sourceView(entry, items)),
  };
};
