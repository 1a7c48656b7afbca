import { Decimal, ZERO } from '../units';

/** Rounds to the nearest step, ties up. */
const nearest = (value: Decimal, step: string | number): Decimal =>
  value.dividedBy(step).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).times(step);

/** 21 CFR 101.9(c)(1): below 5 none, up to 50 the nearest five, above the nearest ten. */
export const usCalories = (kcal: Decimal): string => {
  if (kcal.lessThan(5)) return '0';
  return nearest(kcal, kcal.lessThanOrEqualTo(50) ? 5 : 10).toString();
};

/** 101.9(c)(2): fats. */
export const usFat = (grams: Decimal): string => {
  if (grams.lessThan('0.5')) return '0 g';
  return `${nearest(grams, grams.lessThan(5) ? '0.5' : 1).toString()} g`;
};

/** 101.9(c)(3). */
export const usCholesterol = (mg: Decimal): string => {
  if (mg.lessThan(2)) return '0 mg';
  if (mg.lessThanOrEqualTo(5)) return 'less than 5 mg';
  return `${nearest(mg, 5).toString()} mg`;
};

/** 101.9(c)(4). */
export const usSodium = (mg: Decimal): string => {
  if (mg.lessThan(5)) return '0 mg';
  return `${nearest(mg, mg.lessThanOrEqualTo(140) ? 5 : 10).toString()} mg`;
};

/** 101.9(c)(6) and (7): carbohydrate, fibre, sugars, protein. */
export const usGrams = (grams: Decimal): string => {
  if (grams.lessThan('0.5')) return '0 g';
  if (grams.lessThan(1)) return 'less than 1 g';
  return `${nearest(grams, 1).toString()} g`;
};

/** 101.9(c)(8)(iii) (amounts from memory): vitamin D and iron to a tenth, minerals to ten. */
export const usVitaminD = (mcg: Decimal): string => `${nearest(mcg, '0.1').toString()}mcg`;
export const usIron = (mg: Decimal): string => `${nearest(mg, '0.1').toString()}mg`;
export const usMineral = (mg: Decimal): string => `${nearest(mg, 10).toString()}mg`;

/** Daily values of 101.9(c)(8)(iv) and (9) (from memory). */
export const DAILY_VALUES = {
  fat: 78,
  saturates: 20,
  cholesterolMg: 300,
  sodiumMg: 2300,
  carbohydrate: 275,
  fibre: 28,
  addedSugars: 50,
  vitaminDMcg: 20,
  calciumMg: 1300,
  ironMg: 18,
  potassiumMg: 4700,
} as const;
export type DailyValue = keyof typeof DAILY_VALUES;

const VITAMINS: readonly DailyValue[] = ['vitaminDMcg', 'calciumMg', 'ironMg', 'potassiumMg'];

/** Per cent of the daily value from the unrounded amount; vitamins and minerals in their steps. */
export const percentDailyValue = (nutrient: DailyValue, amount: Decimal): string => {
  const percent = amount.times(100).dividedBy(DAILY_VALUES[nutrient]);
  if (!VITAMINS.includes(nutrient)) return `${nearest(percent, 1).toString()}%`;
  if (percent.lessThan(2)) return percent.lessThan(1) ? '0%' : '2%';
  if (percent.lessThanOrEqualTo(10)) return `${nearest(percent, 2).toString()}%`;
  return `${nearest(percent, percent.lessThanOrEqualTo(50) ? 5 : 10).toString()}%`;
};

/** Sugar alcohols' calories in a gram, 101.9(c)(1)(i)(F) (from memory). */
const SUGAR_ALCOHOLS = {
  isomalt: '2.0',
  lactitol: '2.0',
  xylitol: '2.4',
  maltitol: '2.1',
  sorbitol: '2.6',
  mannitol: '1.6',
  hydrogenatedStarch: '3.0',
  erythritol: '0',
} as const;

interface UsEnergyInput {
  readonly fat: Decimal;
  /** Fibre and sugar alcohols included, as the United States count it. */
  readonly carbohydrate: Decimal;
  readonly protein: Decimal;
  readonly sugarAlcohols: Readonly<Partial<Record<keyof typeof SUGAR_ALCOHOLS, Decimal | null>>>;
  readonly alcohol: Decimal;
}

/** General factors 4, 4 and 9; alcohol 7; sugar alcohols by their own. */
export const usEnergy = (input: UsEnergyInput): Decimal => {
  const kinds = Object.keys(SUGAR_ALCOHOLS) as (keyof typeof SUGAR_ALCOHOLS)[];
  const grams = kinds.map((kind) => input.sugarAlcohols[kind] ?? ZERO);
  const ordinary = grams.reduce((left, amount) => left.minus(amount), input.carbohydrate);
  const alcohols = kinds.reduce(
    (total, kind, index) => total.plus((grams[index] ?? ZERO).times(SUGAR_ALCOHOLS[kind])),
    ZERO,
  );
  return ordinary
    .times(4)
    .plus(alcohols)
    .plus(input.protein.times(4))
    .plus(input.fat.times(9))
    .plus(input.alcohol.times(7));
};
