import type { ReferenceRow } from './row';

const INCOMPLETE = 'The row is incomplete: what is missing counts as inert.';
const SWEETENED = 'Trade purées often hold 10 % added sugar: take the supplier’s specification.';

export const NUT_AND_FRUIT_ROWS: readonly ReferenceRow[] = [
  {
    key: 'hazelnut-raw',
    en: 'hazelnuts, raw',
    fr: 'noisettes crues',
    source: 'CIQUAL 2020, 15004',
    figures: {
      water: 7.3, nutFat: 56.9, sucrose: 4.6, glucose: 0.3, protein: 14.4, fibre: 11.6, ash: 2.6,
    }, // prettier-ignore
  },
  {
    key: 'hazelnut-roasted',
    en: 'hazelnuts, roasted',
    fr: 'noisettes grillées',
    source: 'CIQUAL 2020, 15033',
    figures: { water: 2.52, nutFat: 66, sucrose: 4.13, protein: 14.4, fibre: 9.4, ash: 2.45 },
  },
  {
    key: 'almond-skin-on',
    en: 'almonds, skin on',
    fr: 'amandes avec peau',
    source: 'CIQUAL 2020, 15000',
    note: INCOMPLETE,
    figures: {
      water: 4.8, nutFat: 51.3, sucrose: 4, glucose: 0.2, protein: 18.8, fibre: 12.5, ash: 3.1,
    }, // prettier-ignore
  },
  {
    key: 'almond-blanched',
    en: 'almonds, blanched',
    fr: 'amandes mondées',
    source: 'CIQUAL 2020, 15041',
    note: INCOMPLETE,
    figures: { water: 4.51, nutFat: 52.5, sucrose: 4.46, protein: 21.4, fibre: 9.9, ash: 2.9 },
  },
  {
    key: 'pistachio-roasted',
    en: 'pistachios, roasted, unsalted',
    fr: 'pistaches grillées non salées',
    source: 'CIQUAL 2020, 15044',
    note: INCOMPLETE,
    figures: {
      water: 2.43, nutFat: 47.4, sucrose: 7.12, glucose: 0.26, fructose: 0.22, maltose: 0.13,
      protein: 18.4, fibre: 10.1, ash: 3.03, salt: 0.015,
    }, // prettier-ignore
  },
  {
    key: 'marzipan',
    en: 'marzipan',
    fr: 'pâte d’amandes',
    source: 'CIQUAL 2020, 15201',
    note: INCOMPLETE,
    figures: {
      water: 6.6, nutFat: 13.5, sucrose: 48.8, glucose: 5.5, fructose: 5.3, maltose: 0.4,
      sorbitol: 2.8, protein: 5.8, fibre: 2.8, ash: 0.84, salt: 0.02,
    }, // prettier-ignore
  },
  {
    key: 'raspberry',
    en: 'raspberry purée, unsweetened',
    fr: 'purée de framboise, sans sucre ajouté',
    source: 'CIQUAL 2020, 13015',
    note: SWEETENED,
    figures: {
      water: 86.8, otherFat: 0.8, sucrose: 0.5, glucose: 2.1, fructose: 2.8, organicAcids: 1.9,
      protein: 1.19, fibre: 4.3, ash: 0.35, salt: 0.01,
    }, // prettier-ignore
  },
  {
    key: 'passion-fruit',
    en: 'passion fruit, with pips',
    fr: 'fruit de la passion, avec pépins',
    source: 'CIQUAL 2020, 13016',
    note: SWEETENED,
    figures: {
      water: 73.6, otherFat: 3, sucrose: 3.6, glucose: 2.4, fructose: 2.5, organicAcids: 3,
      protein: 2.13, fibre: 6.8, ash: 0.54, salt: 0.01,
    }, // prettier-ignore
  },
  {
    key: 'mango',
    en: 'mango',
    fr: 'mangue',
    source: 'CIQUAL 2020, 13025',
    note: SWEETENED,
    figures: {
      water: 81.1, otherFat: 0.5, sucrose: 8.5, glucose: 1, fructose: 3.4, starch: 1.1,
      protein: 0.63, fibre: 1.6, ash: 0.3, salt: 0.01,
    }, // prettier-ignore
  },
  {
    key: 'strawberry',
    en: 'strawberry',
    fr: 'fraise',
    source: 'CIQUAL 2020, 13014',
    note: SWEETENED,
    figures: {
      water: 90.3, otherFat: 0.5, glucose: 2.3, fructose: 3.3, organicAcids: 0.85, protein: 0.63,
      fibre: 3.8, ash: 0.47, salt: 0.01,
    }, // prettier-ignore
  },
];
