import {
  ALLERGENS,
  presenceOf,
  type Allergen,
  type AllergenStatement,
  type Presence,
} from '../specification';
import type { BookItem, RecipeBook } from './book';
import type { RecipeContent } from './recipe';

export interface DesignedAllergen {
  readonly allergen: Allergen;
  readonly presence: Exclude<Presence, 'absent'>;
  /** Ingredients that bring it, or that leave it unknown. */
  readonly from: readonly string[];
}

/** Worse first: what is contained is said even when another ingredient leaves it unknown. */
const WORSE = ['contains', 'unknown', 'may_contain'] as const;

/** Every ingredient that is bought, at any depth; a strained infusion's allergens stay. */
export const leavesOf = (content: RecipeContent, book: RecipeBook): BookItem[] => {
  const leaves = new Map<string, BookItem>();
  const walked = new Set<string>();
  const walk = (recipe: RecipeContent): void => {
    for (const line of recipe.lines) {
      const item = book.get(line.itemId);
      if (!item || item.isPackaging || line.role === 'packaging') continue;
      if (walked.has(item.id)) continue;
      walked.add(item.id);
      if (item.recipe) walk(item.recipe);
      else leaves.set(item.id, item);
    }
  };
  walk(content);
  return [...leaves.values()];
};

/** Allergens as designed, from the specification in force of each ingredient. Absent ones are left out. */
export const designedAllergens = (leaves: readonly BookItem[]): DesignedAllergen[] =>
  ALLERGENS.flatMap((allergen) => {
    const worst = WORSE.find((presence) =>
      leaves.some((leaf) => stated(leaf, allergen) === presence),
    );
    if (!worst) return [];
    const from = leaves.filter((leaf) => stated(leaf, allergen) === worst).map((leaf) => leaf.name);
    return [{ allergen, presence: worst, from }];
  });

const NOTHING_STATED: AllergenStatement = {};

const stated = (leaf: BookItem, allergen: Allergen): Presence =>
  presenceOf(leaf.allergens ?? NOTHING_STATED, allergen);
