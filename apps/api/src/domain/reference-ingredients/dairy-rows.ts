import type { ReferenceRow } from './row';

/** Milk solids are what is left of the row without its water and added sugars. */
export const DAIRY_ROWS: readonly ReferenceRow[] = [
  {
    key: 'cream-35',
    en: 'cream, 35 % fat',
    fr: 'crème, 35 % de matière grasse',
    source: 'between USDA SR28 01052 (30.9 % fat) and 01053 (37 % fat)',
    derived: true,
    figures: {
      water: 58.9, milkFat: 35, lactose: 3.1, protein: 2.2, ash: 0.5, salt: 0.08,
      milkSolids: 40.8, dairyAsh: 0.5,
    }, // prettier-ignore
  },
  {
    key: 'cream-37',
    en: 'heavy cream, 37 % fat',
    fr: 'crème, 37 % de matière grasse',
    source: 'USDA SR28 01053',
    figures: {
      water: 57.71, milkFat: 37, lactose: 2.79, protein: 2.05, ash: 0.45, salt: 0.1,
      milkSolids: 42.29, dairyAsh: 0.45,
    }, // prettier-ignore
  },
  {
    key: 'whole-milk-uht',
    en: 'whole milk, UHT',
    fr: 'lait entier UHT',
    source: 'CIQUAL 2020, 19023',
    note: 'The table gives lactose 4.2–4.85; 4.8 is taken.',
    figures: {
      water: 87.5, milkFat: 3.63, lactose: 4.8, protein: 3.32, ash: 0.7, salt: 0.11,
      milkSolids: 12.45, dairyAsh: 0.7,
    }, // prettier-ignore
  },
  {
    key: 'butter-unsalted',
    en: 'butter, unsalted',
    fr: 'beurre doux',
    source: 'USDA SR28 01145',
    note: 'Butter sold in the EU has at least 82 % fat and at most 16 % water (from memory).',
    figures: {
      water: 17.94, milkFat: 81.11, lactose: 0.06, protein: 0.85, ash: 0.04, salt: 0.03,
      milkSolids: 82.06, dairyAsh: 0.04,
    }, // prettier-ignore
  },
  {
    key: 'whole-milk-powder',
    en: 'whole milk powder',
    fr: 'lait entier en poudre',
    source: 'CIQUAL 2020, 19021',
    figures: {
      water: 2.4, milkFat: 26.8, lactose: 37.5, protein: 27.4, ash: 5.9, salt: 0.9,
      milkSolids: 97.6, dairyAsh: 5.9,
    }, // prettier-ignore
  },
  {
    key: 'skimmed-milk-powder',
    en: 'skimmed milk powder',
    fr: 'lait écrémé en poudre',
    source: 'USDA SR28 01091',
    figures: {
      water: 3.16, milkFat: 0.77, lactose: 51.98, protein: 36.16, ash: 7.93, salt: 1.36,
      milkSolids: 96.84, dairyAsh: 7.93,
    }, // prettier-ignore
  },
  {
    key: 'condensed-milk-sweetened',
    en: 'condensed milk, sweetened',
    fr: 'lait concentré sucré',
    source: 'CIQUAL 2020, 19027',
    figures: {
      water: 27.2, milkFat: 7.87, sucrose: 43.5, glucose: 0.42, fructose: 1.14, lactose: 10.5,
      protein: 7.7, ash: 1.71, salt: 0.21, milkSolids: 27.78, dairyAsh: 1.71,
    }, // prettier-ignore
  },
];
