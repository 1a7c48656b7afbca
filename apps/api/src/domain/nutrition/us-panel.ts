import type { NutritionPanel, NutritionRow } from '../label/content';
import type { Nutrient, NutritionPer100g } from '../specification';
import { roundTo, ZERO, type Decimal } from '../units';
import { usRows, type UsRow } from './us-rows';
import { servingsPerContainer, type Serving } from './us-serving';

export interface UsPanelSettings {
  readonly serving: Serving;
  readonly netG: Decimal;
  /** From 200 to 300 % of the reference amount: also per container (101.9(b)(12)). */
  readonly dualColumn: boolean;
}

/** Figures that Nutrition Facts can't do without (21 CFR 101.9(c)). */
const NEEDED = [
  'fat', 'saturates', 'transFat', 'cholesterolMg', 'sodiumMg', 'carbohydrate', 'fibre', 'sugars',
  'addedSugars', 'protein', 'vitaminDMcg', 'calciumMg', 'ironMg', 'potassiumMg',
] as const satisfies readonly Nutrient[]; // prettier-ignore

/** What is missing for Nutrition Facts; empty when they can be printed. */
export const missingForUs = (nutrition: NutritionPer100g): Nutrient[] =>
  NEEDED.filter((nutrient) => nutrition[nutrient] === null);

const DAILY_VALUE_NOTE =
  '* The % Daily Value (DV) tells you how much a nutrient in a serving of food contributes to ' +
  'a daily diet. 2,000 calories a day is used for general nutrition advice.';

/** Nutrition Facts per serving, or null when a figure isn't known. */
export const usPanel = (
  nutrition: NutritionPer100g,
  { serving, netG, dualColumn }: UsPanelSettings,
): NutritionPanel | null => {
  if (missingForUs(nutrition).length > 0) return null;
  const inGrams = (grams: Decimal): readonly UsRow[] =>
    usRows((nutrient) => (nutrition[nutrient] ?? ZERO).times(grams).dividedBy(100));
  const perServing = inGrams(serving.grams);
  const perContainer = dualColumn ? inGrams(netG) : null;
  return {
    language: 'en',
    title: 'Nutrition Facts',
    amountHeading: perContainer ? 'Per serving' : 'Amount per serving',
    portionHeading: perContainer ? 'Per container' : null,
    percentHeading: perContainer ? '% DV*' : '% Daily Value*',
    ...(perContainer ? { portionPercentHeading: '% DV*' } : {}),
    lead: [servingsLine(netG, serving), `Serving size ${sizeOf(serving)}`],
    rows: perServing.map((row, index) => panelRow(row, perContainer?.[index])),
    notes: [DAILY_VALUE_NOTE],
  };
};

const servingsLine = (netG: Decimal, serving: Serving): string => {
  const count = servingsPerContainer(netG, serving.grams);
  return `${count} ${count === '1' ? 'serving' : 'servings'} per container`;
};

const sizeOf = ({ pieces, measure, grams }: Serving): string => {
  const counted = measure ?? `${pieces} piece${pieces === 1 ? '' : 's'}`;
  return `${counted} (${roundTo(grams, 0).toString()}g)`;
};

/** Added sugars stand inside their row's words, each column's own figure in its column. */
const panelRow = (row: UsRow, container: UsRow | undefined): NutritionRow => ({
  label: container ? row.label : (row.singleLabel ?? row.label),
  amount: !container && row.singleLabel ? '' : row.amount,
  portion: container?.amount ?? null,
  percent: row.percent,
  ...(container ? { portionPercent: container.percent ?? '' } : {}),
  indented: row.indented,
});
