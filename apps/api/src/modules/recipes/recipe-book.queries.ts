import type { BookItem, RecipeBook, RecipeContent } from '../../domain/recipe';
import { REFERENCE_INGREDIENTS } from '../../domain/reference-ingredients';
import {
  JsonReader,
  readComposition,
  readNutrition,
  type Allergen,
  type CompositionPer100g,
  type NutritionPer100g,
  type Presence,
} from '../../domain/specification';
import type { Item, Prisma } from '../../generated/prisma/client';
import { optionalDecimalFromDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { loadNewestRecipes, type StoredRecipe } from '../pricing';
import { genericKeyOf } from './generic-composition';
import { contentOfVersion } from './recipe-content';

export type StoredSpecification = Prisma.SpecificationGetPayload<{ include: { allergens: true } }>;

/** Reads stored JSON; what isn't there or can't be read is not stated. */
const read = <T>(stored: unknown, reading: (reader: JsonReader) => T): T | null => {
  if (typeof stored !== 'object' || stored === null || Object.keys(stored).length === 0)
    return null;
  const reader = new JsonReader(stored, '', []);
  const value = reading(reader);
  return reader.problems.length === 0 ? value : null;
};

const compositionIn = (stored: unknown): CompositionPer100g | null => read(stored, readComposition);
const nutritionIn = (stored: unknown): NutritionPer100g | null => read(stored, readNutrition);

/** The approved specification of each item that was approved last. */
export const newestSpecifications = async (
  tx: Tx,
  itemIds: readonly string[],
): Promise<Map<string, StoredSpecification>> => {
  const rows = await tx.specification.findMany({
    where: { itemId: { in: [...itemIds] }, state: 'approved' },
    distinct: ['itemId'],
    orderBy: [{ itemId: 'asc' }, { approvedAt: 'desc' }, { number: 'desc' }],
    include: { allergens: true },
  });
  return new Map(rows.map((row) => [row.itemId, row]));
};

/** What a specification states, as a recipe reads it. */
export const statedBy = (
  specification: StoredSpecification,
): Pick<BookItem, 'composition' | 'nutrition' | 'allergens'> => ({
  composition: compositionIn(specification.composition),
  nutrition: nutritionIn(specification.nutrition),
  allergens: Object.fromEntries(
    specification.allergens.map((row) => [row.allergen as Allergen, row.presence as Presence]),
  ),
});

const NOTHING_STATED = { composition: null, nutrition: null, allergens: null } as const;

const bookItem = (
  item: Item,
  specification: StoredSpecification | undefined,
  recipe: RecipeContent | null,
): BookItem => {
  const stated = specification ? statedBy(specification) : NOTHING_STATED;
  const key = genericKeyOf(item);
  const generic = REFERENCE_INGREDIENTS.find((row) => row.key === key)?.composition ?? null;
  return {
    id: item.id,
    name: item.name,
    unit: item.unit === 'pc' ? 'pc' : 'g',
    pieceMassG: item.unit === 'pc' ? optionalDecimalFromDb(item.nominalMassG) : null,
    isPackaging: item.kind === 'packaging',
    composition: stated.composition ?? generic,
    nutrition: stated.nutrition,
    allergens: stated.allergens,
    isGeneric: stated.composition === null && generic !== null,
    recipe,
  };
};

/** Ids of these items and of every one that they reach through the newest versions of their recipes. */
const reachedFrom = async (tx: Tx, itemIds: readonly string[]): Promise<string[]> => {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    WITH RECURSIVE inside AS (
      SELECT unnest(${[...itemIds]}::uuid[]) AS id
      UNION
      SELECT line.component_id FROM inside
      CROSS JOIN LATERAL (
        SELECT version.id FROM recipe JOIN recipe_version version ON version.recipe_id = recipe.id
        WHERE recipe.item_id = inside.id ORDER BY version.number DESC LIMIT 1
      ) newest
      JOIN recipe_line line ON line.version_id = newest.id
    )
    SELECT id FROM inside`;
  return rows.map(({ id }) => id);
};

/** A recipe book with the rows that it was read from. */
export interface LoadedBook {
  readonly book: RecipeBook;
  readonly items: readonly Item[];
  readonly recipes: readonly StoredRecipe[];
}

/** Every item that these reach through the newest versions of their recipes, these included. */
export const loadBookWithRows = async (tx: Tx, itemIds: readonly string[]): Promise<LoadedBook> => {
  const ids = await reachedFrom(tx, itemIds);
  const items = await tx.item.findMany({ where: { id: { in: ids } } });
  const recipes = await loadNewestRecipes(tx, ids);
  const specifications = await newestSpecifications(tx, ids);
  const contents = new Map(recipes.map((row) => [row.recipe.itemId, contentOfVersion(row)]));
  const entries = items.map((item) =>
    bookItem(item, specifications.get(item.id), contents.get(item.id) ?? null),
  );
  return { book: new Map(entries.map((entry) => [entry.id, entry])), items, recipes };
};

export const loadBook = async (tx: Tx, itemIds: readonly string[]): Promise<RecipeBook> =>
  (await loadBookWithRows(tx, itemIds)).book;
