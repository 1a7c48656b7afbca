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
import { loadNewestRecipes } from '../pricing';
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

/** Every item that these reach through the newest versions of their recipes, level by level. */
export const loadBook = async (tx: Tx, itemIds: readonly string[]): Promise<RecipeBook> => {
  const book = new Map<string, BookItem>();
  let level = [...new Set(itemIds)];
  while (level.length > 0) {
    const items = await tx.item.findMany({ where: { id: { in: level } } });
    const versions = await loadNewestRecipes(tx, level);
    const recipes = new Map(versions.map((row) => [row.recipe.itemId, contentOfVersion(row)]));
    const specifications = await newestSpecifications(tx, level);
    for (const item of items) {
      const recipe = recipes.get(item.id) ?? null;
      book.set(item.id, bookItem(item, specifications.get(item.id), recipe));
    }
    const next = [...recipes.values()].flatMap((recipe) => recipe.lines.map((line) => line.itemId));
    level = [...new Set(next)].filter((id) => !book.has(id));
  }
  return book;
};
