import { ok, refuse, type Result } from '../refusals/result';
import { Decimal, ZERO } from '../units';
import { asPart, mergeCost, scaleCost, splitLoss, totalCost, type CostEntry } from './cost-entries';
import {
  labourCost,
  overheadCost,
  totalMinutes,
  type LabourRate,
  type OverheadRule,
} from './labour-and-overhead';
import type { RecipeFacts } from './recipe-facts';
import type { CostingRefusal } from './refusals';
import { priceOf, type UnitPrice } from './unit-price';
import { say } from '../words/say';

/** Everything that a designed cost depends on, in one value that a what-if can vary. */
export interface CostBasis {
  readonly day: string;
  readonly recipes: ReadonlyMap<string, RecipeFacts>;
  readonly prices: ReadonlyMap<string, UnitPrice>;
  readonly rates: readonly LabourRate[];
  readonly overhead: OverheadRule;
}

/**
 * Cost of one gram or one piece of an item as it is designed: replacement prices, expected losses,
 * planned minutes, divided by what comes out good. An item with a recipe is costed from its recipe;
 * one without must have a price. Each item is worked out once however often it is used.
 */
export const designedCost = (item: string, basis: CostBasis): Result<CostEntry[], CostingRefusal> =>
  costOfItem(item, basis, new Map(), []);

type Known = Map<string, CostEntry[]>;

const costOfItem = (
  item: string,
  basis: CostBasis,
  known: Known,
  path: readonly string[],
): Result<CostEntry[], CostingRefusal> => {
  const before = known.get(item);
  if (before) return ok(before);
  if (path.includes(item)) return containsItself(item, path);
  const recipe = basis.recipes.get(item);
  const cost = recipe
    ? costOfRecipe(recipe, basis, known, [...path, item])
    : priceOf(item, new Decimal(1), basis.prices);
  if (cost.ok) known.set(item, cost.value);
  return cost;
};

const costOfRecipe = (
  recipe: RecipeFacts,
  basis: CostBasis,
  known: Known,
  path: readonly string[],
): Result<CostEntry[], CostingRefusal> => {
  if (!recipe.goodYield.isPositive() || recipe.goodYield.isZero()) return noGoodOutput(recipe.item);
  const drawn: CostEntry[] = [];
  let bought = ZERO;
  for (const line of recipe.lines) {
    const unit = costOfItem(line.component, basis, known, path);
    if (!unit.ok) return unit;
    const cost = scaleCost(unit.value, line.quantity);
    if (!basis.recipes.has(line.component)) bought = bought.plus(totalCost(cost));
    drawn.push(
      ...(line.role === 'packaging'
        ? asPackaging(cost)
        : splitLoss(asPart(cost, line.role), line.wasteRatio)),
    );
  }
  const labour = labourCost(recipe.labour, basis.rates, basis.day);
  if (!labour.ok) return labour;
  const overhead = overheadCost(basis.overhead, {
    minutes: totalMinutes(recipe.labour),
    pieces: recipe.makesPieces ? recipe.goodYield : ZERO,
    directCost: bought.plus(totalCost(labour.value)),
  });
  const whole = [...drawn, ...labour.value, ...overhead];
  return ok(mergeCost(scaleCost(whole, new Decimal(1).dividedBy(recipe.goodYield))));
};

export const asPackaging = (entries: readonly CostEntry[]): CostEntry[] =>
  entries.map((entry) =>
    entry.category === 'material' ? { ...entry, category: 'packaging', part: 'packaging' } : entry,
  );

const containsItself = (item: string, path: readonly string[]): Result<never, CostingRefusal> =>
  refuse({
    code: 'recipe-contains-itself',
    detail: say`The recipe of ${item} contains ${item} itself. Take it out of one of the recipes on the way.`,
    facts: { items: [...path, item] },
  });

export const noGoodOutput = (thing: string): Result<never, CostingRefusal> =>
  refuse({
    code: 'no-good-output',
    detail: say`Nothing good comes out of ${thing}, so a cost per piece can't be stated.`,
    facts: { thing },
  });
