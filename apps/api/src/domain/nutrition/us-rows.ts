import type { Nutrient } from '../specification';
import type { Decimal } from '../units';
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

/** A line of Nutrition Facts for one amount of food. */
export interface UsRow {
  readonly label: string;
  /** The whole line where there is one column: "Includes 5 g Added Sugars". */
  readonly singleLabel?: string;
  readonly amount: string;
  readonly percent: string | null;
  readonly indented: boolean;
}

const row = (
  label: string,
  amount: string,
  percent: string | null = null,
  indented = false,
): UsRow => ({ label, amount, percent, indented });

/** All lines in the order of 21 CFR 101.9(c); `of` gives the amount in the food that is counted. */
export const usRows = (of: (nutrient: Nutrient) => Decimal): UsRow[] => {
  // The United States count fibre as carbohydrate; specifications state it without.
  const carbohydrate = of('carbohydrate').plus(of('fibre'));
  const dv = (nutrient: DailyValue): string => percentDailyValue(nutrient, of(nutrient));
  return [
    row('Calories', usCalories(caloriesOf(of, carbohydrate))),
    row('Total Fat', usFat(of('fat')), dv('fat')),
    row('Saturated Fat', usFat(of('saturates')), dv('saturates'), true),
    row('Trans Fat', usFat(of('transFat')), null, true),
    row('Cholesterol', usCholesterol(of('cholesterolMg')), dv('cholesterolMg')),
    row('Sodium', usSodium(of('sodiumMg')), dv('sodiumMg')),
    row('Total Carbohydrate', usGrams(carbohydrate), percentDailyValue('carbohydrate', carbohydrate)), // prettier-ignore
    row('Dietary Fiber', usGrams(of('fibre')), dv('fibre'), true),
    row('Total Sugars', usGrams(of('sugars')), null, true),
    {
      ...row('Incl. Added Sugars', usGrams(of('addedSugars')), dv('addedSugars'), true),
      singleLabel: `Includes ${usGrams(of('addedSugars'))} Added Sugars`,
    },
    row('Protein', usGrams(of('protein'))),
    row('Vitamin D', usVitaminD(of('vitaminDMcg')), dv('vitaminDMcg')),
    row('Calcium', usMineral(of('calciumMg')), dv('calciumMg')),
    row('Iron', usIron(of('ironMg')), dv('ironMg')),
    row('Potassium', usMineral(of('potassiumMg')), dv('potassiumMg')),
  ];
};

const caloriesOf = (of: (nutrient: Nutrient) => Decimal, carbohydrate: Decimal): Decimal =>
  usEnergy({
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
