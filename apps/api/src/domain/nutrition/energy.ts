import type { NutritionPer100g } from '../specification';
import { Decimal, ZERO } from '../units';

/** Regulation (EU) No 1169/2011, Annex XIV: kJ and kcal in a gram. */
const FACTORS = {
  carbohydrate: { kJ: 17, kcal: 4 },
  polyols: { kJ: 10, kcal: '2.4' },
  protein: { kJ: 17, kcal: 4 },
  fat: { kJ: 37, kcal: 9 },
  salatrims: { kJ: 25, kcal: 6 },
  alcohol: { kJ: 29, kcal: 7 },
  organicAcids: { kJ: 13, kcal: 3 },
  fibre: { kJ: 8, kcal: 2 },
} as const;

export interface Energy {
  readonly kJ: Decimal;
  readonly kcal: Decimal;
}

type Conversion = Pick<
  NutritionPer100g,
  | 'fat'
  | 'carbohydrate'
  | 'polyols'
  | 'erythritol'
  | 'protein'
  | 'fibre'
  | 'alcohol'
  | 'organicAcids'
  | 'salatrims'
>;

/**
 * Energy of 100 g from unrounded grams, each unit by its own factors and never one from the other.
 * Polyols are inside carbohydrate and erythritol inside polyols, so each is taken out of the next.
 * Null when a nutrient that counts isn't known.
 */
export const energyOf = (nutrition: Conversion): Energy | null => {
  const { fat, carbohydrate, protein, fibre, polyols, erythritol } = nutrition;
  if (!fat || !carbohydrate || !protein || !fibre || !polyols || !erythritol) return null;
  const grams = {
    carbohydrate: carbohydrate.minus(polyols),
    polyols: polyols.minus(erythritol),
    protein,
    fat: fat.minus(nutrition.salatrims ?? ZERO),
    salatrims: nutrition.salatrims ?? ZERO,
    alcohol: nutrition.alcohol ?? ZERO,
    organicAcids: nutrition.organicAcids ?? ZERO,
    fibre,
  };
  const total = (unit: 'kJ' | 'kcal'): Decimal =>
    (Object.keys(FACTORS) as (keyof typeof FACTORS)[]).reduce(
      (energy, part) => energy.plus(grams[part].times(FACTORS[part][unit])),
      ZERO,
    );
  return { kJ: total('kJ'), kcal: total('kcal') };
};

const SALT_PER_SODIUM = new Decimal('2.5');

/** Salt in the Regulation's sense: sodium × 2.5, whatever the sodium comes from. */
export const saltFromSodium = (sodiumG: Decimal): Decimal => sodiumG.times(SALT_PER_SODIUM);
