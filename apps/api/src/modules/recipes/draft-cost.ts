import {
  designedCost,
  GRAMS_PER_KG,
  recipeFacts,
  totalCost,
  type CostBasis,
} from '../../domain/costing';
import type { RecipeContent } from '../../domain/recipe';
import type { Refused } from '../../domain/refusals';
import { ZERO } from '../../domain/units';
import type { Item } from '../../generated/prisma/client';
import { moneyText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { RefusalError } from '../../platform/problems';
import { loadBasis, USUAL_ROLE } from '../pricing';
import type { DesignedCostView } from './analysis.dto';
import type { LoadedBook } from './recipe-book.queries';

interface Costed extends Item {
  readonly labourRole: string | null;
}

/**
 * Cost as designed: replacement prices through the recipes inside, planned minutes and overhead. What
 * can't be stated says why instead; a missing price is not free.
 */
export const costOfRecipe = async (
  tx: Tx,
  day: string,
  item: Costed,
  content: RecipeContent,
  { items, recipes: inside }: LoadedBook,
): Promise<DesignedCostView> => {
  const per = item.unit === 'pc' ? 'pc' : 'kg';
  const basis = await basisOrRefusal(tx, day, { items: [...items, item], recipes: inside });
  if ('refusal' in basis) return missing(per, basis.refusal, new Map());
  const labour = [{ role: item.labourRole ?? USUAL_ROLE, minutes: content.labourMinutes ?? ZERO }];
  const scalable = { ...content, cavitiesPerTray: null };
  const facts = recipeFacts(item.id, scalable, labour, item.kind === 'piece');
  if (!facts.ok) return missing(per, facts.refusal, basis.names);
  const recipes = new Map([...basis.costs.recipes, [item.id, facts.value]]);
  const cost = designedCost(item.id, { ...basis.costs, recipes });
  if (!cost.ok) return missing(per, cost.refusal, basis.names);
  const each = totalCost(cost.value);
  const amount = per === 'kg' ? each.times(GRAMS_PER_KG) : each;
  return { costPerUnit: moneyText(amount), per, missing: null };
};

type Basis =
  | { readonly costs: CostBasis; readonly names: ReadonlyMap<string, string> }
  | { readonly refusal: Refused };

/** A recipe elsewhere that can't be read must not keep this one from being analysed. */
const basisOrRefusal = async (
  tx: Tx,
  day: string,
  known: Pick<LoadedBook, 'items' | 'recipes'>,
): Promise<Basis> => {
  try {
    const { costs, items } = await loadBasis(tx, day, known);
    return { costs, names: new Map([...items.values()].map((item) => [item.id, item.name])) };
  } catch (error) {
    if (error instanceof RefusalError) return { refusal: error.refusal };
    throw error;
  }
};

/** Refusals of the domain name items by id; people know them by name. */
const missing = (
  per: string,
  refusal: Refused,
  names: ReadonlyMap<string, string>,
): DesignedCostView => {
  const words = [...names].reduce<string>(
    (text, [id, name]) => text.replaceAll(id, name),
    refusal.detail,
  );
  return { costPerUnit: null, per, missing: words };
};
