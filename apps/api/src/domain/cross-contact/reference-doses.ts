import type { Allergen } from '../specification';
import { Decimal } from '../units';

/**
 * Reference doses, mg of total protein of the source: FAO/WHO Ad hoc Joint Expert Consultation on
 * Risk Assessment of Food Allergens, Parts 2 and 5 (based on ED05; almond provisional; crustaceans
 * by shrimp). No figure stands here for Brazil nut, macadamia, pine nut, mustard or lupin, nor any
 * for oats: without a dose nothing is below it.
 */
export const REFERENCE_DOSES_MG: Readonly<Partial<Record<Allergen, number>>> = {
  walnut: 1,
  pecan: 1,
  cashew: 1,
  pistachio: 1,
  almond: 1,
  peanut: 2,
  egg: 2,
  milk: 2,
  sesame: 2,
  hazelnut: 3,
  wheat: 5,
  fish: 5,
  crustaceans: 200,
  celery: 1,
  soy: 10,
};

const MG_PER_KG_IN_MG_PER_G = 1000;

/** mg of protein in a kilogram at which one sitting reaches the dose; null without either. */
export const actionLevelMgPerKg = (allergen: Allergen, sittingG: Decimal): Decimal | null => {
  const dose = REFERENCE_DOSES_MG[allergen];
  return dose === undefined || !sittingG.greaterThan(0)
    ? null
    : new Decimal(dose).times(MG_PER_KG_IN_MG_PER_G).dividedBy(sittingG);
};

/** The same limit as mg of an ingredient whose protein share is known (skimmed-milk powder 35 %). */
export const asIngredientMgPerKg = (levelMgPerKg: Decimal, proteinPercent: Decimal): Decimal =>
  levelMgPerKg.times(100).dividedBy(proteinPercent);
