import { ok, refuse, type Result } from '../refusals/result';
import type { RecipeRefusal } from './refusals';
import { say } from '../words/say';

/**
 * Refuses a recipe that would contain itself through its components. `componentsOf` gives the
 * components of every item that has a recipe; `names` only serves the refusal's words.
 */
export const refuseCircle = (
  itemId: string,
  components: readonly string[],
  componentsOf: ReadonlyMap<string, readonly string[]>,
  names: ReadonlyMap<string, string>,
): Result<null, RecipeRefusal> => {
  const done = new Set<string>();
  const pathTo = (at: string, path: readonly string[]): readonly string[] | null => {
    if (at === itemId) return [...path, at];
    if (done.has(at)) return null;
    done.add(at);
    for (const next of componentsOf.get(at) ?? []) {
      const found = pathTo(next, [...path, at]);
      if (found) return found;
    }
    return null;
  };
  for (const component of components) {
    const path = pathTo(component, [itemId]);
    if (!path) continue;
    const words = path.map((id) => names.get(id) ?? id);
    return refuse({
      code: 'recipe-contains-itself',
      detail: say`This recipe would contain itself: ${words.join(' → ')}. Take one of these lines out.`,
      facts: { items: path },
    });
  }
  return ok(null);
};
