import type { IngoingMix } from '../declaration';
import { NUTRIENTS, type Nutrient, type NutritionPer100g } from '../specification';
import { sum, ZERO, type Decimal } from '../units';

export interface MixNutrition {
  readonly per100g: NutritionPer100g;
  /** Lots that say nothing of a nutrient, by nutrient: it can't be declared then. */
  readonly missing: ReadonlyMap<Nutrient, readonly string[]>;
}

/** Nutrients that evaporate: counted by what is left in the finished food. */
const VOLATILE: readonly Nutrient[] = ['alcohol'];

/**
 * Nutrition of 100 g of finished food: what went in, over what came out. Cooking off water makes
 * everything denser; what was strained out or thrown away has been taken out of the grams already.
 * A lot that weighs nothing in the product needs no figures.
 */
export const mixNutrition = (mix: IngoingMix): MixNutrition => {
  const missing = new Map<Nutrient, string[]>();
  const lots = mix.lots.filter((lot) => lot.ingoingG.greaterThan(0));
  const totals = NUTRIENTS.map((nutrient) => {
    const grams = lots.map((lot) => {
      const stated = lot.specification?.nutrition?.[nutrient] ?? null;
      if (stated === null) missing.set(nutrient, [...(missing.get(nutrient) ?? []), lot.lotCode]);
      const weight = VOLATILE.includes(nutrient) ? lot.massG : lot.ingoingG;
      return stated?.times(weight) ?? ZERO;
    });
    return [nutrient, missing.has(nutrient) ? null : perFinished(sum(grams), mix)] as const;
  });
  return { per100g: Object.fromEntries(totals) as unknown as NutritionPer100g, missing };
};

const perFinished = (total: Decimal, mix: IngoingMix): Decimal | null =>
  mix.finishedG.greaterThan(0) ? total.dividedBy(mix.finishedG) : null;
