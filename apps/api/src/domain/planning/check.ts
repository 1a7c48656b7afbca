import { ok, refuse, type Result } from '../refusals/result';
import type { PlanProblem } from './problem';
import type { PlanningRefusal } from './refusals';
import { say } from '../words/say';

/** What would make planning run for ever or reckon nonsense is refused before it begins. */
export const checkProblem = (problem: PlanProblem): Result<true, PlanningRefusal> => {
  const done = new Set<string>();
  for (const demand of problem.demands) {
    if (!demand.quantity.greaterThan(0)) {
      return refuse({
        code: 'plan-quantity-unusable',
        detail: say`Order line ${demand.id} asks for ${demand.quantity.toString()}. Ask for more than nothing.`,
        facts: { demand: demand.id },
      });
    }
    const refused = checkItem(demand.item, problem, done, []);
    if (refused) return refused;
  }
  return ok(true);
};

const checkItem = (
  id: string,
  problem: PlanProblem,
  done: Set<string>,
  path: readonly string[],
): Result<never, PlanningRefusal> | undefined => {
  if (done.has(id)) return undefined;
  if (path.includes(id)) {
    return refuse({
      code: 'plan-recipe-contains-itself',
      detail: say`The recipe of ${id} contains ${id} itself. Take it out of one of the recipes on the way.`,
      facts: { items: [...path, id] },
    });
  }
  const item = problem.items.get(id);
  if (!item) {
    return refuse({
      code: 'plan-item-unknown',
      detail: say`${id} is asked for and nothing is known of it.`,
      facts: { item: id },
    });
  }
  const { recipe } = item;
  if (recipe && !(recipe.goodRatio.greaterThan(0) && recipe.goodRatio.lessThanOrEqualTo(1))) {
    return refuse({
      code: 'plan-quantity-unusable',
      detail: say`Nothing good comes out of ${id} as its losses stand. Correct its recipe.`,
      facts: { item: id },
    });
  }
  for (const { component } of recipe?.lines ?? []) {
    const refused = checkItem(component, problem, done, [...path, id]);
    if (refused) return refused;
  }
  done.add(id);
  return undefined;
};
