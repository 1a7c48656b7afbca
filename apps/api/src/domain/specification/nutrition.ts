import type { Decimal } from '../units';

/**
 * Nutrients in 100 g, in grams unless the name says otherwise. `carbohydrate` is the European one:
 * polyols in, fibre out. Null is "not stated", which keeps a declaration that needs it from being
 * printed; it is never read as zero.
 */
export const NUTRIENTS = [
  'fat', 'saturates', 'monounsaturates', 'polyunsaturates', 'transFat', 'carbohydrate', 'sugars',
  'addedSugars', 'polyols', 'erythritol', 'starch', 'fibre', 'protein', 'salt', 'alcohol',
  'organicAcids', 'salatrims', 'cholesterolMg', 'sodiumMg', 'vitaminDMcg', 'calciumMg', 'ironMg',
  'potassiumMg', 'isomalt', 'lactitol', 'xylitol', 'maltitol', 'sorbitol', 'mannitol',
  'hydrogenatedStarch',
] as const; // prettier-ignore
export type Nutrient = (typeof NUTRIENTS)[number];

export type NutritionPer100g = Readonly<Record<Nutrient, Decimal | null>>;

/** Nutrients that, left out by a supplier, are none: they are rare and a sheet omits them. */
export const ZERO_WHEN_LEFT_OUT: readonly Nutrient[] = [
  'polyols', 'erythritol', 'alcohol', 'organicAcids', 'salatrims', 'isomalt', 'lactitol', 'xylitol',
  'maltitol', 'sorbitol', 'mannitol', 'hydrogenatedStarch',
]; // prettier-ignore
