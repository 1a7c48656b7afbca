import { alcoholGramsPer100g } from '../../domain/composition';
import {
  FAT_KINDS,
  NUTRIENTS,
  POLYOL_KINDS,
  SINGLE_PARTS,
  SUGAR_KINDS,
} from '../../domain/specification';
import { Decimal } from '../../domain/units';
import type { RowReader } from './row-reader';
import { say } from '../../domain/words/say';

/** How columns of a composition are called, and where they stand in it. */
export const COMPOSITION: readonly (readonly [column: string, ...path: string[]])[] = [
  ...SINGLE_PARTS.map((part) => [part.toLowerCase(), part] as const),
  ...FAT_KINDS.map((kind) => [kind.toLowerCase(), 'fat', kind] as const),
  ...SUGAR_KINDS.map((kind) => [kind.toLowerCase(), 'sugars', kind] as const),
  ...POLYOL_KINDS.map((kind) => [kind.toLowerCase(), 'polyols', kind] as const),
  ['cocoa_butter_in_cocoa', 'cocoaSolids', 'cocoaButter'],
  ['fat_free_cocoa', 'cocoaSolids', 'fatFreeCocoa'],
  ['milk_solids', 'cocoaSolids', 'milkSolids'],
  ['milk_fat_in_milk', 'cocoaSolids', 'milkFat'],
  ['syrup_solids', 'glucoseSyrup', 'solids'],
  ['syrup_de', 'glucoseSyrup', 'dextroseEquivalent'],
  ['dairy_ash', 'dairyAsh'],
];

export const NUTRITION = NUTRIENTS.map(
  (nutrient) => [`per100_${nutrient.toLowerCase()}`, nutrient] as const,
);

export const COLUMNS = [
  'item', 'supplier', 'document', 'name_en', 'name_fr', 'contains', 'may_contain', 'absent',
  'ingredient_json', 'statements_json', 'alcohol_percent_vol',
  ...COMPOSITION.map(([column]) => column),
  ...NUTRITION.map(([column]) => column),
]; // prettier-ignore

type Json = Record<string, unknown>;

const put = (into: Json, path: readonly string[], value: string): void => {
  const [name = '', ...rest] = path;
  if (rest.length === 0) into[name] = value;
  else {
    const inner = (into[name] ?? {}) as Json;
    into[name] = inner;
    put(inner, rest, value);
  }
};

/** The composition of a line; null when it states none. */
export const compositionOf = (row: RowReader): Json | null => {
  const composition: Json = {};
  for (const [column, ...path] of COMPOSITION) {
    const value = row.decimal(column, 6);
    if (value !== null) put(composition, path, value);
  }
  const strength = row.decimal('alcohol_percent_vol', 2);
  if (strength !== null) {
    const grams = alcoholGramsPer100g(new Decimal(strength));
    if (composition['alcohol'] !== undefined) {
      row.problem('alcohol_percent_vol', say`states the alcohol twice: leave one of the two empty`);
    } else if (grams === null) {
      row.problem('alcohol_percent_vol', say`must be at most 100`);
    } else composition['alcohol'] = grams.toFixed(2);
  }
  return Object.keys(composition).length === 0 ? null : composition;
};

export const nutritionOf = (row: RowReader): Json | null => {
  const stated = NUTRITION.flatMap(([column, nutrient]) => {
    const value = row.decimal(column, 6);
    return value === null ? [] : [[nutrient, value] as const];
  });
  return stated.length === 0 ? null : Object.fromEntries(stated);
};
