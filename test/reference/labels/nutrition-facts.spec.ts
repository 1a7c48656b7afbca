import { servingOf, usPanel } from '@api/domain/nutrition';
import { NUTRIENTS, type Nutrient, type NutritionPer100g } from '@api/domain/specification';
import { Decimal } from '@api/domain/units';

/*
 * Source: 21 CFR 101.9(b)(2), (b)(5), (b)(6) and (b)(12), from memory; the bands of 200 and 300 % of
 * the reference amount as public guides to the rule give them. Figures worked by hand.
 */

const d = (value: string | number): Decimal => new Decimal(value);

const served = (netG: number, pieceG: number | null = null) => {
  const { serving, dualColumn } = servingOf({
    netG: d(netG),
    pieceG: pieceG === null ? null : d(pieceG),
    kind: 'candy',
    preferMore: false,
  });
  const size = serving.measure ?? `${serving.pieces} pieces`;
  return `${size}, ${serving.grams.toDecimalPlaces(1).toString()} g${dualColumn ? ', two columns' : ''}`;
};

describe('serving of a package that is sold singly (reference amount 30 g)', () => {
  it.each([
    [50, null, '1 package, 50 g'], // 167 %
    [59.9, null, '1 package, 59.9 g'],
    [60, null, '1/2 package, 30 g, two columns'], // 200 %
    [90, null, '1/3 package, 30 g, two columns'], // 300 %
    [90.1, null, '1/3 package, 30 g'],
    [100, null, '1/3 package, 33.3 g'],
    [44, 11, '4 pieces, 44 g'], // 147 %: the box is one serving, all four pieces
    [66, 11, '3 pieces, 33 g, two columns'],
    [125, 11, '3 pieces, 33 g'],
  ])('%s g in pieces of %s: %s', (netG, pieceG, expected) => {
    expect(served(netG, pieceG)).toBe(expected);
  });
});

const per100g = (stated: Partial<Record<Nutrient, string>>): NutritionPer100g =>
  Object.fromEntries(
    NUTRIENTS.map((nutrient) => [nutrient, d(stated[nutrient] ?? 0)]),
  ) as unknown as NutritionPer100g;

const praline = per100g({
  fat: '42', saturates: '20', carbohydrate: '35', fibre: '11', sugars: '30', addedSugars: '28',
  protein: '8', sodiumMg: '50', ironMg: '6', calciumMg: '120',
}); // prettier-ignore

describe('Nutrition Facts', () => {
  const panelOf = (netG: number, pieceG: number | null) =>
    usPanel(praline, {
      ...servingOf({ netG: d(netG), pieceG: pieceG === null ? null : d(pieceG), kind: 'candy', preferMore: false }),
      netG: d(netG),
    }); // prettier-ignore
  const lines = (panel: ReturnType<typeof panelOf>): string[] =>
    panel?.rows.map(({ label, amount, percent, portion, portionPercent }) =>
      [label, amount, percent, portion, portionPercent].filter((text) => text).join(' '),
    ) ?? [];

  it('of one serving have one column', () => {
    const panel = panelOf(44, 11);
    expect(panel?.lead).toEqual(['1 serving per container', 'Serving size 4 pieces (44g)']);
    expect(panel?.portionHeading).toBe(null);
    // 44 g: carbohydrate 46 × 0.44 = 20.24; kcal 4 × 20.24 + 4 × 3.52 + 9 × 18.48 = 261.36.
    expect(lines(panel).slice(0, 2)).toEqual(['Calories 260', 'Total Fat 18 g 24%']);
    expect(lines(panel)).toContain('Includes 12 g Added Sugars 25%');
  });

  it('of 200 to 300 % also show the container, amount and per cent of each side by side', () => {
    const panel = panelOf(66, 11);
    expect(panel?.lead[0]).toBe('2 servings per container');
    expect(panel).toMatchObject({ amountHeading: 'Per serving', portionHeading: 'Per container' });
    // 33 g and 66 g: fat 13.86 and 27.72 g, 18 % and 36 % of 78 g; 196 and 392 kcal.
    expect(lines(panel).slice(0, 2)).toEqual(['Calories 200 390', 'Total Fat 14 g 18% 28 g 36%']);
    expect(lines(panel)).toContain('Incl. Added Sugars 9 g 18% 18 g 37%');
    // Iron 1.98 and 3.96 mg: 11 and 22 %, in steps of five.
    expect(lines(panel)).toContain('Iron 2mg 10% 4mg 20%');
  });

  it('carbohydrate includes fibre, and lactose is no added sugar as the supplier states it', () => {
    expect(lines(panelOf(44, 11))).toContain('Total Carbohydrate 20 g 7%');
    expect(lines(panelOf(44, 11))).toContain('Total Sugars 13 g');
  });
});
