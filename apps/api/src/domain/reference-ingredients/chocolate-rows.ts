import type { ReferenceRow } from './row';

const BY_DIFFERENCE =
  'The table gives total sugars (taken as sucrose) and carbohydrate by difference; what isn’t sugar ' +
  'or fibre stands under other. Fat-free cocoa is the rest without sugar, fat and water.';

export const CHOCOLATE_ROWS: readonly ReferenceRow[] = [
  {
    key: 'dark-chocolate-45-59',
    en: 'dark chocolate, 45–59 % cocoa',
    fr: 'chocolat noir, 45–59 % de cacao',
    source: 'USDA SR28 19902',
    derived: true,
    note: BY_DIFFERENCE,
    figures: {
      water: 0.97, cocoaButter: 31.28, sucrose: 47.9, protein: 4.88, fibre: 7, ash: 1.7,
      salt: 0.06, other: 6.27, fatFreeCocoa: 19.85,
    }, // prettier-ignore
  },
  {
    key: 'dark-chocolate-60-69',
    en: 'dark chocolate, 60–69 % cocoa',
    fr: 'chocolat noir, 60–69 % de cacao',
    source: 'USDA SR28 19903',
    derived: true,
    note: BY_DIFFERENCE,
    figures: {
      water: 1.25, cocoaButter: 38.31, sucrose: 36.71, protein: 6.12, fibre: 8, ash: 1.9,
      salt: 0.03, other: 7.71, fatFreeCocoa: 23.73,
    }, // prettier-ignore
  },
  {
    key: 'dark-chocolate-70-85',
    en: 'dark chocolate, 70–85 % cocoa',
    fr: 'chocolat noir, 70–85 % de cacao',
    source: 'USDA SR28 19904',
    derived: true,
    note: BY_DIFFERENCE,
    figures: {
      water: 1.37, cocoaButter: 42.63, sucrose: 23.99, protein: 7.79, fibre: 10.9, ash: 2.32,
      salt: 0.05, other: 11, fatFreeCocoa: 32.01,
    }, // prettier-ignore
  },
  {
    key: 'dark-chocolate-70-fr',
    en: 'dark chocolate, 70 % cocoa and more (French table)',
    fr: 'chocolat noir, 70 % de cacao minimum',
    source: 'CIQUAL 2020, 31074',
    derived: true,
    note: 'Means of several products, not one recipe; the row is incomplete.',
    figures: {
      water: 0.9, cocoaButter: 46.3, sucrose: 17.9, starch: 4.4, protein: 10.4, fibre: 12.8,
      ash: 2.74, salt: 0.02, fatFreeCocoa: 30.34,
    }, // prettier-ignore
  },
  {
    key: 'milk-chocolate',
    en: 'milk chocolate',
    fr: 'chocolat au lait',
    source: 'CIQUAL 2020, 31004',
    derived: true,
    note:
      'Milk fat, milk protein and milk ash are computed from lactose as if all milk were whole milk ' +
      'powder; ask the supplier.',
    figures: {
      water: 0.7, cocoaButter: 23.1, milkFat: 7.7, sucrose: 42.3, lactose: 10.8, starch: 2.45,
      protein: 7.5, fibre: 2.9, ash: 1.99, salt: 0.2, milkSolids: 26.6, dairyAsh: 1.7,
      fatFreeCocoa: 6.7,
    }, // prettier-ignore
  },
  {
    key: 'white-chocolate',
    en: 'white chocolate',
    fr: 'chocolat blanc',
    source: 'CIQUAL 2020, 31010',
    derived: true,
    note: 'Milk fat is computed from lactose as if all milk were whole milk powder; ask the supplier.',
    figures: {
      water: 1.1, cocoaButter: 26.6, milkFat: 7.6, sucrose: 43.4, lactose: 10.7, protein: 6.16,
      fibre: 1, ash: 1.68, salt: 0.22, milkSolids: 26.1, dairyAsh: 1.68,
    }, // prettier-ignore
  },
  {
    key: 'cocoa-butter',
    en: 'cocoa butter',
    fr: 'beurre de cacao',
    source: 'USDA SR28 04501',
    figures: { cocoaButter: 100 },
  },
  {
    key: 'cocoa-mass',
    en: 'cocoa mass',
    fr: 'pâte de cacao',
    source: 'from memory',
    derived: true,
    note: 'Fat ranges from 50 to 58 %; the row is incomplete.',
    figures: {
      water: 1.5, cocoaButter: 54, sucrose: 0.5, starch: 6, protein: 12, fibre: 16, ash: 3,
      fatFreeCocoa: 44.5,
    }, // prettier-ignore
  },
  {
    key: 'cocoa-powder-us',
    en: 'cocoa powder, low fat',
    fr: 'cacao en poudre maigre',
    source: 'USDA SR28 19165',
    derived: true,
    note: BY_DIFFERENCE,
    figures: {
      water: 3, cocoaButter: 13.7, sucrose: 1.75, protein: 19.6, fibre: 37, ash: 5.8, salt: 0.05,
      other: 19.15, fatFreeCocoa: 83.3,
    }, // prettier-ignore
  },
  {
    key: 'cocoa-powder-fr',
    en: 'cocoa powder, 20–22 % fat',
    fr: 'cacao en poudre, 20–22 % de beurre de cacao',
    source: 'CIQUAL 2020, 18100',
    figures: {
      water: 3.5, cocoaButter: 20.6, sucrose: 0.9, starch: 8.5, organicAcids: 2.4, protein: 22.4,
      fibre: 29.5, ash: 10, salt: 0.11, fatFreeCocoa: 75.9,
    }, // prettier-ignore
  },
];
