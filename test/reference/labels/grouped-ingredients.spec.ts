import type { Interchangeable } from '@api/domain/declaration';
import type { GroupKind, IngredientNode } from '@api/domain/specification';
import { declarationOf, listOf } from '../../support/labels/written';
import { hazelnut, lot, milk, part, specify } from '../../support/labels/ingredients';

/*
 * Source: Regulation (EU) No 1169/2011, Annex VII Part A. Point 4 read in the consolidated text;
 * points 5, 7, 8 and 9 from memory; the form of oils also by guidance of the Food Standards Agency
 * ("vegetable oils (sunflower; rapeseed) in varying proportions").
 */

const of = (kind: GroupKind, name: string, member?: string): IngredientNode =>
  part(name, null, {
    group: { kind, memberNames: member === undefined ? null : { en: member } },
  });
const sugar = (grams: number) => lot(specify(part('sugar')), grams);
const codes = (...args: Parameters<typeof declarationOf>): string[] =>
  declarationOf(...args).findings.map(({ code }) => code);

describe('point 4: fruit of which none predominates', () => {
  const fruit = [
    lot(specify(of('fruit', 'raspberries')), 300),
    lot(specify(of('fruit', 'redcurrants')), 250),
  ];

  it('stands under one name, placed by its total weight, each fruit named behind it', () => {
    expect(listOf([sugar(500), ...fruit], { groups: ['fruit'] })).toBe(
      'fruit in varying proportions (raspberries, redcurrants), sugar',
    );
    expect(listOf([sugar(500), ...fruit])).toBe('sugar, raspberries, redcurrants');
  });

  it('in the words of each language', () => {
    const names = { fr: 'framboises', de: 'Himbeeren', nl: 'frambozen', it: 'lamponi', es: 'frambuesas' }; // prettier-ignore
    const others = { fr: 'groseilles', de: 'Johannisbeeren', nl: 'bessen', it: 'ribes', es: 'grosellas' }; // prettier-ignore
    const two = [
      lot(specify({ ...of('fruit', 'a'), names }), 3),
      lot(specify({ ...of('fruit', 'b'), names: others }), 2),
    ];
    const inLanguage = (language: 'fr' | 'de' | 'nl' | 'it' | 'es') => listOf(two, { groups: ['fruit'], language }); // prettier-ignore
    expect(inLanguage('fr')).toBe('fruits en proportion variable (framboises, groseilles)');
    expect(inLanguage('de')).toBe('Obst in veränderlichen Gewichtsanteilen (Himbeeren, Johannisbeeren)'); // prettier-ignore
    expect(inLanguage('nl')).toBe('fruit in wisselende verhouding (frambozen, bessen)');
    expect(inLanguage('it')).toBe('frutta in proporzione variabile (lamponi, ribes)');
    expect(inLanguage('es')).toBe('frutas en proporción variable (frambuesas, grosellas)');
  });

  it('a lone fruit is no mixture', () => {
    expect(listOf([sugar(5), ...fruit.slice(0, 1)], { groups: ['fruit'] })).toBe(
      'raspberries, sugar',
    );
  });

  it('one that weighs more than twice the next is pointed out (the law gives no figure)', () => {
    const heavy = [lot(specify(of('fruit', 'apples')), 600), ...fruit.slice(1)];
    expect(codes(heavy, { groups: ['fruit'] })).toEqual(['group-predominates']);
    expect(codes(fruit, { groups: ['fruit'] })).toEqual([]);
  });

  it('needs no quantity of its own (Annex VIII, point 1(c), from memory)', () => {
    const asked = { groups: ['fruit'] as const, quantified: ['raspberries'] };
    expect(listOf([sugar(500), ...fruit], asked)).not.toContain('%');
    expect(listOf([sugar(500), ...fruit], { quantified: ['raspberries'] })).toContain(
      'raspberries 29%',
    );
  });

  it('the United States have no such rule, so the list stays as it is', () => {
    expect(listOf([sugar(500), ...fruit], { groups: ['fruit'], market: 'US' })).toBe(
      'sugar, raspberries, redcurrants',
    );
  });
});

describe('points 4 and 5: a bought mixture whose parts vary', () => {
  const mixture = part('mixed spice', null, {
    flags: { varyingProportions: true },
    parts: [part('cinnamon'), part('ginger'), part('coriander')],
  });

  it('says so in front of its list, percentages kept back or not', () => {
    expect(listOf([sugar(90), lot(specify(mixture), 10)])).toBe(
      'sugar, mixed spice in varying proportions (cinnamon, ginger, coriander)',
    );
  });

  it('stays together where everything else is taken apart', () => {
    const flat = { listForm: 'flattened' as const };
    expect(listOf([sugar(90), lot(specify(mixture), 10)], flat)).toBe(
      'sugar, mixed spice in varying proportions (cinnamon, ginger, coriander)',
    );
    expect(codes([lot(specify(mixture), 10)], flat)).toEqual([]);
  });

  it('never hides an allergen of its parts', () => {
    const nuts = part('nut mix', null, {
      flags: { varyingProportions: true },
      parts: [part('hazelnuts', null, { origins: [hazelnut] }), part('seeds')],
    });
    expect(listOf([lot(specify(nuts), 10)])).toBe(
      'nut mix in varying proportions (**hazelnuts**, seeds)',
    );
  });
});

describe('points 8 and 9: refined vegetable oils and fats', () => {
  const oils = [
    lot(specify(of('vegetable_oil', 'sunflower oil', 'sunflower')), 20),
    lot(specify(of('vegetable_oil', 'rapeseed oil', 'rapeseed')), 30),
  ];

  it('stand together by their plants, with the phrase where they vary', () => {
    const groups = ['vegetable_oil'] as const;
    expect(listOf([sugar(40), ...oils], { groups })).toBe(
      'vegetable oils (rapeseed, sunflower), sugar',
    );
    expect(listOf([sugar(40), ...oils], { groups, oilsVary: true })).toBe(
      'vegetable oils (rapeseed, sunflower) in varying proportions, sugar',
    );
  });

  it('say how far a fat is hydrogenated, and keep an allergen that is not excluded', () => {
    const fats = [
      lot(specify({ ...of('vegetable_fat', 'palm fat', 'palm'), flags: { fullyHydrogenated: true } }), 5), // prettier-ignore
      lot(specify({ ...of('vegetable_fat', 'soya fat', 'soya'), origins: [{ allergen: 'soy' }] }), 4), // prettier-ignore
    ];
    expect(listOf(fats, { groups: ['vegetable_fat'] })).toBe(
      'vegetable fats (palm (fully hydrogenated), **soya**)',
    );
  });

  it('an oil that the name speaks of stays by itself with its quantity', () => {
    const olive = lot(specify(of('vegetable_oil', 'olive oil', 'olive')), 10);
    expect(listOf([...oils, olive], { groups: ['vegetable_oil'], quantified: ['olive oil'] })).toBe(
      'vegetable oils (rapeseed, sunflower), olive oil 17%',
    );
  });
});

describe('point 7: ingredients that replace each other under 2 %', () => {
  const [cane, beet] = [part('cane syrup'), part('beet syrup')];
  const pair = (a: IngredientNode, b: IngredientNode): Interchangeable => [
    { itemId: a.names.en ?? '', itemName: a.names.en ?? '', specification: specify(a) },
    { itemId: b.names.en ?? '', itemName: b.names.en ?? '', specification: specify(b) },
  ];
  const listed = (inside: IngredientNode, grams: number, other: IngredientNode = beet) =>
    [[sugar(1000 - grams), lot(specify(inside), grams)], { interchangeable: [pair(inside, other)] }] as const; // prettier-ignore

  it('are said as "contains … and/or …", also the one that is not inside this time', () => {
    expect(listOf(...listed(cane, 19))).toBe('sugar, contains cane syrup and/or beet syrup');
    const both = [sugar(981), lot(specify(cane), 10), lot(specify(beet), 9)];
    expect(listOf(both, { interchangeable: [pair(cane, beet)] })).toBe(
      'sugar, contains cane syrup and/or beet syrup',
    );
  });

  it('from 2 % on they are listed as they are, with a warning', () => {
    expect(listOf(...listed(cane, 20))).toBe('sugar, cane syrup');
    expect(codes(...listed(cane, 20))).toEqual(['not-interchangeable']);
    const both = [sugar(980), lot(specify(cane), 10), lot(specify(beet), 10)];
    expect(codes(both, { interchangeable: [pair(cane, beet)] })).toEqual(['not-interchangeable']);
  });

  it.each<[string, IngredientNode]>([
    ['an additive', part('E330', null, { additive: { functionalClass: 'acid', eNumber: 'E330', carriedOver: false } })],
    ['something from Annex II', part('milk syrup', null, { origins: [milk] })],
    ['a compound', part('blend', null, { parts: [part('x', '100')] })],
  ])('never for %s', (_, other) => {
    expect(listOf(...listed(cane, 10, other))).toBe('sugar, cane syrup');
    expect(codes(...listed(cane, 10, other))).toEqual(['not-interchangeable']);
  }); // prettier-ignore

  it('never for one of which an allergen is unknown, or nothing is approved', () => {
    const unsure: Interchangeable = [
      { itemId: 'cane syrup', itemName: 'cane syrup', specification: specify(cane) },
      { itemId: 'beet syrup', itemName: 'beet syrup', specification: { ...specify(beet), allergens: {} } }, // prettier-ignore
    ];
    const inside = [sugar(990), lot(specify(cane), 10)];
    expect(codes(inside, { interchangeable: [unsure] })).toEqual(['not-interchangeable']);
    const [known] = unsure;
    const blank = { itemId: 'x', itemName: 'x', specification: null };
    expect(codes(inside, { interchangeable: [[known, blank]] })).toEqual(['not-interchangeable']);
  });
});
