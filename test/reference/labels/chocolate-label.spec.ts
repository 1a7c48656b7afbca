import { textOf } from '@api/domain/declaration';
import { composeLabel, type LabelSettings, type MarketCode } from '@api/domain/label';
import { JsonReader, readComposition, type ChocolateKind, type Specification } from '@api/domain/specification'; // prettier-ignore
import { ask, settings } from '../../support/labels/ask';
import { lot, milk, part, specify } from '../../support/labels/ingredients';

const composed = (
  chocolateKind: ChocolateKind,
  cocoaSolids: object,
  fat: object,
  ingredient = part('chocolate', null, { origins: [milk] }),
): Specification => ({
  ...specify(ingredient, { chocolateKind }),
  composition: readComposition(
    new JsonReader(
      { water: '1', fat, sugars: { sucrose: '40', lactose: '8' }, protein: '7', fibre: '5', ash: '2', other: '2', cocoaSolids },
      '',
      [],
    ),
  ),
}); // prettier-ignore

const MILK = composed(
  'milk_chocolate',
  { cocoaButter: '26', fatFreeCocoa: '7.6', milkSolids: '20.7', milkFat: '5' },
  { cocoaButter: '26', milkFat: '5' },
);
const WHITE = composed('white_chocolate', { cocoaButter: '28', milkSolids: '21', milkFat: '5' }, { cocoaButter: '28', milkFat: '5' }); // prettier-ignore

const labelOf = (
  specification: Specification,
  legalName: LabelSettings['legalName'],
  market: MarketCode = 'EU',
) => composeLabel(ask([lot(specification, 100)], market, { settings: settings({ legalName }) }));
const statements = (label: ReturnType<typeof labelOf>): string[] =>
  (label.content?.blocks ?? [])
    .filter(({ kind }) => kind === 'statement')
    .map(({ runs }) => textOf(runs));

/** Source: Directive 2000/36/EC, Article 3(3) and (4); milk solids by SI 2003/1659 (guidance). */
describe('what a chocolate states beside its list', () => {
  const bar = { kind: 'chocolate', chocolate: 'milk_chocolate' } as const;

  it('cocoa solids, rounded down', () => {
    expect(statements(labelOf(MILK, bar))).toEqual(['Cocoa solids: 33% minimum.']);
  });

  it.each(['GB', 'NI'] as const)('milk solids too in %s', (market) => {
    expect(statements(labelOf(MILK, bar, market))).toEqual([
      'Cocoa solids: 33% minimum.',
      'Milk solids: 20% minimum.',
    ]);
  });

  it('neither for white chocolate, nor for a praline', () => {
    expect(statements(labelOf(WHITE, { kind: 'chocolate', chocolate: 'white_chocolate' }))).toEqual([]); // prettier-ignore
    expect(statements(labelOf(MILK, { kind: 'praline' }))).toEqual([]);
  });

  it('is kept back when its composition is not known', () => {
    const label = labelOf({ ...MILK, composition: null }, bar);
    expect(label.findings.map(({ code }) => code)).toContain('cocoa-solids-unknown');
    expect(label.content).toBe(null);
  });
});

/** Source: Directive 2000/36/EC, Article 2 (French decree 76-692, article 6). */
describe('vegetable fats beside cocoa butter', () => {
  const shea = composed(
    'milk_chocolate',
    { cocoaButter: '26', fatFreeCocoa: '7.6', milkSolids: '20.7', milkFat: '5' },
    { cocoaButter: '22', milkFat: '5', otherFat: '4' },
    part('milk chocolate', null, {
      origins: [milk],
      parts: [part('sugar', '60'), part('shea fat', '4', { vegetableFat: 'shea' })],
    }),
  );

  it('are stated in bold, apart from the list and right behind it', () => {
    const label = labelOf(shea, { kind: 'praline' });
    const kinds = label.content?.blocks.map(({ kind }) => kind) ?? [];
    expect(kinds.indexOf('vegetable_fats')).toBe(kinds.indexOf('ingredients') + 1);
    const block = label.content?.blocks.find(({ kind }) => kind === 'vegetable_fats');
    expect(block?.runs).toEqual([
      { text: 'Contains vegetable fats in addition to cocoa butter', emphasis: 'strong' },
    ]);
  });

  it('are not stated where none is inside', () => {
    const kinds = labelOf(MILK, { kind: 'praline' }).content?.blocks.map(({ kind }) => kind);
    expect(kinds).not.toContain('vegetable_fats');
  });
});

/** Source: Directive 2000/36/EC, Article 3(2) (from memory); mixing with sweets: the safe reading. */
describe('an assortment', () => {
  it('has one list for all its products', () => {
    const lots = [lot(MILK, 60), lot(WHITE, 40)];
    const label = composeLabel(
      ask(lots, 'EU', { settings: settings({ legalName: { kind: 'assortment', onlyChocolates: true } }) }),
    ); // prettier-ignore
    const lists = label.content?.blocks.filter(({ kind }) => kind === 'ingredients');
    expect(lists).toHaveLength(1);
  });

  it('that holds other sweets is no chocolate assortment', () => {
    const label = labelOf(MILK, { kind: 'assortment', onlyChocolates: false });
    expect(label.content).toBe(null);
    expect(label.findings.map(({ code }) => code)).toContain('name-not-allowed');
  });
});
