import { ok, refuse, type Result } from '../refusals/result';
import { Decimal } from '../units';
import type { ScalingRefusal } from './refusals';
import { scaleRecipe, type ScalableRecipe, type ScaledRecipe } from './scale';
import type { ScalingTarget } from './target';

export interface ScaledStage {
  readonly itemId: string;
  readonly recipe: ScaledRecipe;
}

export interface ScaledTree {
  /** The item asked for first, then each component after everything that asks for it. */
  readonly stages: readonly ScaledStage[];
  /** Items without a recipe: what to take from the store, in the item's unit. */
  readonly fromStore: ReadonlyMap<string, Decimal>;
}

/**
 * Scales a recipe and every recipe inside it (box → pieces → fillings → ingredients). A component
 * that several recipes ask for is scaled once, for the whole need. `recipes` must hold no circle.
 */
export const scaleTree = (
  itemId: string,
  target: ScalingTarget,
  recipes: ReadonlyMap<string, ScalableRecipe>,
): Result<ScaledTree, ScalingRefusal> => {
  const need = new Map<string, Decimal>();
  const stages: ScaledStage[] = [];
  for (const id of makersFirst(itemId, recipes)) {
    const recipe = recipes.get(id);
    if (!recipe) continue;
    const wanted = id === itemId ? target : targetOf(recipe, need.get(id) ?? new Decimal(0));
    const scaled = scaleRecipe(recipe, wanted);
    if (!scaled.ok)
      return refuse({ ...scaled.refusal, facts: { ...scaled.refusal.facts, item: id } });
    need.delete(id);
    stages.push({ itemId: id, recipe: scaled.value });
    for (const line of scaled.value.lines) {
      need.set(line.itemId, (need.get(line.itemId) ?? new Decimal(0)).plus(line.quantity));
    }
  }
  return ok({ stages, fromStore: need });
};

const targetOf = (recipe: ScalableRecipe, need: Decimal): ScalingTarget =>
  recipe.yieldPieces === null
    ? { kind: 'grams', massG: need }
    : { kind: 'pieces', pieces: need.ceil() };

/** Every item reached, each before its components (reverse of a depth-first post-order). */
const makersFirst = (root: string, recipes: ReadonlyMap<string, ScalableRecipe>): string[] => {
  const seen = new Set<string>();
  const order: string[] = [];
  const visit = (id: string): void => {
    if (seen.has(id)) return;
    seen.add(id);
    for (const line of recipes.get(id)?.lines ?? []) visit(line.itemId);
    order.push(id);
  };
  visit(root);
  return order.reverse();
};
