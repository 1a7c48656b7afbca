import {
  ALLERGENS,
  parseSpecification,
  specificationToJson,
  type SpecificationJson,
} from '../../domain/specification';
import type { RowReader } from './row-reader';
import { compositionOf, nutritionOf } from './specification-columns';
import { named, say } from '../../domain/words/say';

/** What isn't named in one of the three columns stays unknown; `absent` may say `all_others`. */
const allergensOf = (row: RowReader): Record<string, string> => {
  const contains = row.list('contains', ALLERGENS);
  const mayContain = row.list('may_contain', ALLERGENS);
  const absent = row.list('absent', [...ALLERGENS, 'all_others']);
  const stated = new Map<string, string>();
  const state = (allergen: string, presence: string): void => {
    if (stated.has(allergen)) row.problem('contains', say`${named(allergen)} is stated twice`);
    stated.set(allergen, presence);
  };
  for (const allergen of contains) state(allergen, 'contains');
  for (const allergen of mayContain) state(allergen, 'may_contain');
  for (const allergen of absent) if (allergen !== 'all_others') state(allergen, 'absent');
  if (absent.includes('all_others')) {
    for (const allergen of ALLERGENS) if (!stated.has(allergen)) stated.set(allergen, 'absent');
  }
  return Object.fromEntries(stated);
};

/** A single ingredient from its names; a compound one comes as JSON, as the API states it. */
const ingredientOf = (row: RowReader, item: string, contains: readonly string[]): unknown => {
  const stated = row.json('ingredient_json');
  if (stated !== null) return stated;
  const french = row.text('name_fr', 120);
  return {
    names: { en: row.text('name_en', 120) ?? item, ...(french === null ? {} : { fr: french }) },
    percent: null,
    origins: contains
      .filter((allergen) => allergen !== 'sulphites')
      .map((allergen) => ({ allergen })),
    flags: {},
    parts: [],
  };
};

/** A line as a specification; null while something in it is wrong. */
export interface ReadSpecification {
  readonly item: string;
  readonly supplier: string;
  readonly document: string | null;
  readonly json: SpecificationJson | null;
}

export const readSpecificationRow = (row: RowReader): ReadSpecification => {
  const item = row.needed('item', 120);
  const allergens = allergensOf(row);
  const contains = Object.keys(allergens).filter((name) => allergens[name] === 'contains');
  const parsed = parseSpecification({
    ingredient: ingredientOf(row, item, contains),
    allergens,
    composition: compositionOf(row),
    nutrition: nutritionOf(row),
    statements: row.json('statements_json') ?? {},
  });
  if (!parsed.ok) {
    for (const { pointer, said } of parsed.problems) row.problem(pointer.slice(1), said);
  }
  return {
    item,
    supplier: row.needed('supplier', 120),
    document: row.text('document', 300),
    json: parsed.ok ? specificationToJson(parsed.value) : null,
  };
};
