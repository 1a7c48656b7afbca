import type { ReferenceRow } from './row';

export const OTHER_ROWS: readonly ReferenceRow[] = [
  {
    key: 'spirit-40',
    en: 'spirit, 40 % vol',
    fr: 'eau-de-vie, 40 % vol',
    source: 'USDA SR28 14037 (water); alcohol by weight from density',
    derived: true,
    figures: { water: 66.6, alcohol: 33.3 },
  },
  {
    key: 'liqueur',
    en: 'liqueur',
    fr: 'liqueur',
    source: 'CIQUAL 2020, 1003',
    note: 'Mean of a class, total sugars taken as sucrose; the row is incomplete.',
    derived: true,
    figures: { water: 35.6, otherFat: 0.3, sucrose: 35.3, protein: 0.1, ash: 0.6, alcohol: 23.8 },
  },
  {
    key: 'salt',
    en: 'salt',
    fr: 'sel',
    source: 'CIQUAL 2020, 11017',
    figures: { water: 0.03, ash: 99.9, salt: 99.9 },
  },
  {
    key: 'tea-infusion',
    en: 'tea, infused',
    fr: 'thé infusé',
    source: 'CIQUAL 2020, 18154',
    figures: { water: 99.7, other: 0.3, ash: 0.05, salt: 0.01 },
  },
  {
    key: 'tea-leaf',
    en: 'tea leaf, dry',
    fr: 'feuilles de thé sèches',
    source: 'from memory',
    note: 'Strained out again; only water (4–7) and ash are known.',
    figures: { water: 5.5, ash: 5 },
  },
  {
    key: 'water',
    en: 'water',
    fr: 'eau',
    source: 'by definition',
    figures: { water: 100 },
  },
];
