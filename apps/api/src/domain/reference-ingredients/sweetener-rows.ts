import type { ReferenceRow } from './row';

export const SWEETENER_ROWS: readonly ReferenceRow[] = [
  {
    key: 'sucrose',
    en: 'sugar (sucrose)',
    fr: 'sucre (saccharose)',
    source: 'CIQUAL 2020, 31016; USDA SR28 19335',
    figures: { water: 0.1, sucrose: 99.8, ash: 0.02 },
  },
  {
    key: 'glucose-syrup-de-40',
    en: 'glucose syrup, DE 40',
    fr: 'sirop de glucose, DE 40',
    source: 'from memory',
    figures: {
      water: 20, glucose: 13, maltose: 11, higherSaccharides: 56, ash: 0.3, salt: 0.1, syrupDe: 40,
    }, // prettier-ignore
  },
  {
    key: 'glucose-syrup-de-60',
    en: 'glucose syrup, DE 60',
    fr: 'sirop de glucose, DE 60',
    source: 'from memory',
    figures: {
      water: 20, glucose: 29, maltose: 25, higherSaccharides: 26, ash: 0.3, salt: 0.1, syrupDe: 60,
    }, // prettier-ignore
  },
  {
    key: 'dextrose-monohydrate',
    en: 'dextrose monohydrate',
    fr: 'dextrose monohydraté',
    source: 'computed from molar masses (18.015 in 198.17)',
    derived: true,
    figures: { water: 9.1, glucose: 90.9 },
  },
  {
    key: 'invert-sugar',
    en: 'invert sugar paste',
    fr: 'sucre inverti',
    source: 'from memory',
    figures: { water: 22, glucose: 39, fructose: 39, ash: 0.2 },
  },
  {
    key: 'sorbitol-powder',
    en: 'sorbitol, powder',
    fr: 'sorbitol en poudre',
    source: 'from memory',
    figures: { water: 0.5, sorbitol: 99 },
  },
  {
    key: 'sorbitol-syrup-70',
    en: 'sorbitol syrup, 70 %',
    fr: 'sirop de sorbitol, 70 %',
    source: 'from memory',
    note: 'The grade that doesn’t crystallise holds about 50 sorbitol and 20 other polyols.',
    figures: { water: 30, sorbitol: 70 },
  },
  {
    key: 'glycerol',
    en: 'glycerol, 99.5 %',
    fr: 'glycérol, 99,5 %',
    source: 'from memory',
    figures: { water: 0.5, glycerol: 99.5 },
  },
  {
    key: 'honey',
    en: 'honey',
    fr: 'miel',
    source: 'CIQUAL 2020, 31008',
    note: 'The table’s “galactose” stands under other sugar.',
    figures: {
      water: 17.6, sucrose: 1.24, glucose: 33.5, fructose: 39.9, maltose: 1.49, otherSugar: 3.1,
      protein: 0.56, ash: 0.19, salt: 0.01,
    }, // prettier-ignore
  },
];
