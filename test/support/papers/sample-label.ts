import type { LabelContent, NutritionRow, TextRun } from '@api/domain/label/content';

/** `*milk*` is an allergen. */
const runs = (text: string): TextRun[] =>
  text
    .split('*')
    .map((part, index): TextRun => ({
      text: part,
      emphasis: index % 2 === 1 ? 'allergen' : 'none',
    }))
    .filter(({ text: part }) => part !== '');

const row = (label: string, amount: string, indented = false): NutritionRow => ({
  label,
  amount,
  portion: null,
  percent: null,
  indented,
});

/** A label of an invented box in two languages. */
export const sampleLabel: LabelContent = {
  market: 'EU',
  languages: ['en', 'fr'],
  lotCode: '261124-0094',
  lotMark: 'L261124-0094',
  blocks: [
    { kind: 'name', language: 'en', runs: runs('Assorted filled chocolates') },
    {
      kind: 'ingredients',
      language: 'en',
      runs: runs(
        'Ingredients: dark chocolate 45 % (cocoa mass, sugar, cocoa butter, emulsifier: lecithins (*soy*)), cream (*milk*) 18 %, sugar, *hazelnuts* 9 %, glucose syrup, raspberry purée 6 %, butter (*milk*), *wheat* flour, sea salt, gelling agent: pectins.',
      ),
    },
    { kind: 'precaution', language: 'en', runs: runs('May contain *almonds* and *egg*.') },
    { kind: 'storage', language: 'en', runs: runs('Keep dry at 14 to 18 °C.') },
    { kind: 'name', language: 'fr', runs: runs('Assortiment de bonbons de chocolat') },
    {
      kind: 'ingredients',
      language: 'fr',
      runs: runs(
        'Ingrédients : chocolat noir 45 % (pâte de cacao, sucre, beurre de cacao, émulsifiant : lécithines (*soja*)), crème (*lait*) 18 %, sucre, *noisettes* 9 %, sirop de glucose, purée de framboise 6 %, beurre (*lait*), farine de *blé*, sel de mer, gélifiant : pectines.',
      ),
    },
    { kind: 'precaution', language: 'fr', runs: runs('Peut contenir *amandes* et *œuf*.') },
    { kind: 'storage', language: 'fr', runs: runs('Conserver au sec entre 14 et 18 °C.') },
    {
      kind: 'operator',
      language: null,
      runs: runs('Atelier Lunebleue, 3 Quay Lane, 10000 Portville'),
    },
  ],
  quantity: { text: '132 g', minDigitHeightMm: 3, eMark: true, minEMarkHeightMm: 3 },
  date: {
    words: [
      { language: 'en', text: 'Best before' },
      { language: 'fr', text: 'À consommer de préférence avant le' },
    ],
    date: '05/01/2027',
    machineDate: '2027-01-05',
    kind: 'best_before',
  },
  nutrition: [
    {
      language: 'en',
      title: 'Nutrition declaration',
      amountHeading: 'per 100 g',
      portionHeading: null,
      percentHeading: null,
      lead: [],
      rows: [
        row('Energy', '2267 kJ / 543 kcal'),
        row('Fat', '31 g'),
        row('of which saturates', '19 g', true),
        row('Carbohydrate', '57 g'),
        row('of which sugars', '48 g', true),
        row('Protein', '7.2 g'),
        row('Salt', '0.11 g'),
      ],
      notes: [],
    },
  ],
  price: null,
  minXHeightMm: 1.2,
};
