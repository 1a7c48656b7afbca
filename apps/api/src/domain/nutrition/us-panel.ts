import type { NutritionPanel, NutritionRow } from '../label/content';
import type { Nutrient, NutritionPer100g } from '../specification';
import { roundTo, ZERO, type Decimal } from '../units';
import {
  percentDailyValue,
  usCalories,
  usCholesterol,
  usEnergy,
  usFat,
  usGrams,
  usIron,
  usMineral,
  usSodium,
  usVitaminD,
  type DailyValue,
} from './us-rounding';
import { servingsPerContainer, type Serving } from './us-serving';

export interface UsPanelSettings {
  readonly serving: Serving;
  readonly netG: Decimal;
}

/** Figures that Nutrition Facts can't do without (21 CFR 101.9(c)). */
const NEEDED = [
  'fat', 'saturates', 'transFat', 'cholesterolMg', 'sodiumMg', 'carbohydrate', 'fibre', 'sugars',
  'addedSugars', 'protein', 'vitaminDMcg', 'calciumMg', 'ironMg', 'potassiumMg',
] as const satisfies readonly Nutrient[]; // prettier-ignore

/** What is missing for Nutrition Facts; empty when they can be printed. */
export const missingForUs = (nutrition: NutritionPer100g): Nutrient[] =>
  NEEDED.filter((nutrient) => nutrition[nutrient] === null);

/** Nutrition Facts per serving, or null when a figure isn't known. */
export const usPanel = (
  nutrition: NutritionPer100g,
  { serving, netG }: UsPanelSettings,
): NutritionPanel | null => {
  if (missingForUs(nutrition).length > 0) return null;
  const of = (nutrient: Nutrient): Decimal =>
    (nutrition[nutrient] ?? ZERO).times(serving.grams).dividedBy(100);
  // The United States count fibre as carbohydrate; specifications state it without.
  const carbohydrate = of('carbohydrate').plus(of('fibre'));
  const calories = usEnergy({
    fat: of('fat'),
    carbohydrate,
    protein: of('protein'),
    sugarAlcohols: {
      isomalt: of('isomalt'), lactitol: of('lactitol'), xylitol: of('xylitol'),
      maltitol: of('maltitol'), sorbitol: of('sorbitol'), mannitol: of('mannitol'),
      hydrogenatedStarch: of('hydrogenatedStarch'), erythritol: of('erythritol'),
    },
    alcohol: of('alcohol'),
  }); // prettier-ignore
  const pieces = `${serving.pieces} piece${serving.pieces === 1 ? '' : 's'}`;
  return {
    language: 'en',
    title: 'Nutrition Facts',
    amountHeading: 'Amount per serving',
    portionHeading: null,
    percentHeading: '% Daily Value*',
    lead: [
      `${servingsPerContainer(netG, serving.grams)} servings per container`,
      `Serving size ${pieces} (${roundTo(serving.grams, 0).toString()}g)`,
    ],
    rows: [row('Calories', usCalories(calories)), ...nutrientRows(of, carbohydrate)],
    notes: [
      '* The % Daily Value (DV) tells you how much a nutrient in a serving of food contributes to ' +
        'a daily diet. 2,000 calories a day is used for general nutrition advice.',
    ],
  };
};

const row = (
  label: string,
  amount: string,
  percent: string | null = null,
  indented = false,
): NutritionRow => ({ label, amount, portion: null, percent, indented });

const nutrientRows = (
  of: (nutrient: Nutrient) => Decimal,
  carbohydrate: Decimal,
): NutritionRow[] => {
  const dv = (nutrient: DailyValue): string => percentDailyValue(nutrient, of(nutrient));
  return [
    row('Total Fat', usFat(of('fat')), dv('fat')),
    row('Saturated Fat', usFat(of('saturates')), dv('saturates'), true),
    row('Trans Fat', usFat(of('transFat')), null, true),
    row('Cholesterol', usCholesterol(of('cholesterolMg')), dv('cholesterolMg')),
    row('Sodium', usSodium(of('sodiumMg')), dv('sodiumMg')),
    row(
      'Total Carbohydrate',
      usGrams(carbohydrate),
      percentDailyValue('carbohydrate', carbohydrate),
    ),
    row('Dietary Fiber', usGrams(of('fibre')), dv('fibre'), true),
    row('Total Sugars', usGrams(of('sugars')), null, true),
    row(`Includes ${usGrams(of('addedSugars'))} Added Sugars`, '', dv('addedSugars'), true),
    row('Protein', usGrams(of('protein'))),
    row('Vitamin D', usVitaminD(of('vitaminDMcg')), dv('vitaminDMcg')),
    row('Calcium', usMineral(of('calciumMg')), dv('calciumMg')),
    row('Iron', usIron(of('ironMg')), dv('ironMg')),
    row('Potassium', usMineral(of('potassiumMg')), dv('potassiumMg')),
  ];
};
