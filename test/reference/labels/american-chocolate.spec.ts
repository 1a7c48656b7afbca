import {
  americanFindings,
  americanNameOf,
  americanShortfalls,
  chocolateLiquor,
  type AmericanChocolate,
  type ChocolateFigures,
} from '@api/domain/chocolate-law';
import { JsonReader, readComposition, type Specification } from '@api/domain/specification';
import { Decimal } from '@api/domain/units';
import { inEnglish } from '@api/domain/words/say';
import { lot, part, specify } from '../../support/labels/ingredients';

const d = (value: string | number): Decimal => new Decimal(value);

const figures = (stated: Partial<Record<keyof ChocolateFigures, string>>): ChocolateFigures => ({
  cocoaButter: d(stated.cocoaButter ?? 0),
  fatFreeCocoa: d(stated.fatFreeCocoa ?? 0),
  milkSolids: d(stated.milkSolids ?? 0),
  milkFat: d(stated.milkFat ?? 0),
  sweeteners: d(stated.sweeteners ?? 0),
  hazelnuts: d(0),
  nuts: d(0),
});
const passes = (name: AmericanChocolate, stated: Parameters<typeof figures>[0]): boolean =>
  americanShortfalls(name, figures(stated)).length === 0;

/** Source: 21 CFR 163.123, 163.124 and 163.130 as published; 163.140 from memory. */
describe('21 CFR 163: standards of identity', () => {
  it('count chocolate liquor as 2.2 times the cocoa without its fat (163.123(a)(2))', () => {
    expect(chocolateLiquor(figures({ fatFreeCocoa: '16' })).toString()).toBe('35.2');
  });

  // 15 / 2.2 = 6.818…, 35 / 2.2 = 15.909…, 10 / 2.2 = 4.545… per cent fat-free cocoa.
  it.each<[AmericanChocolate, Parameters<typeof figures>[0], boolean]>([
    ['sweet_chocolate', { fatFreeCocoa: '6.82' }, true],
    ['sweet_chocolate', { fatFreeCocoa: '6.81' }, false],
    ['sweet_chocolate', { fatFreeCocoa: '7', milkSolids: '11.9' }, true],
    ['sweet_chocolate', { fatFreeCocoa: '7', milkSolids: '12' }, false],
    ['semisweet_chocolate', { fatFreeCocoa: '15.91' }, true],
    ['semisweet_chocolate', { fatFreeCocoa: '15.90' }, false],
    ['milk_chocolate', { fatFreeCocoa: '4.55', milkSolids: '12', milkFat: '3.39' }, true],
    ['milk_chocolate', { fatFreeCocoa: '4.54', milkSolids: '12', milkFat: '3.39' }, false],
    ['milk_chocolate', { fatFreeCocoa: '4.55', milkSolids: '11.9', milkFat: '3.39' }, false],
    ['milk_chocolate', { fatFreeCocoa: '4.55', milkSolids: '12', milkFat: '3.38' }, false],
    ['skim_milk_chocolate', { fatFreeCocoa: '4.55', milkSolids: '12', milkFat: '3.38' }, true],
    ['skim_milk_chocolate', { fatFreeCocoa: '4.55', milkSolids: '12', milkFat: '3.39' }, false],
    ['white_chocolate', { cocoaButter: '20', milkSolids: '14', milkFat: '3.5', sweeteners: '55' }, true],
    ['white_chocolate', { cocoaButter: '19.9', milkSolids: '14', milkFat: '3.5', sweeteners: '55' }, false],
    ['white_chocolate', { cocoaButter: '20', milkSolids: '13.9', milkFat: '3.5', sweeteners: '55' }, false],
    ['white_chocolate', { cocoaButter: '20', milkSolids: '14', milkFat: '3.4', sweeteners: '55' }, false],
    ['white_chocolate', { cocoaButter: '20', milkSolids: '14', milkFat: '3.5', sweeteners: '55.1' }, false],
  ])('%s of %j: %s', (name, stated, allowed) => {
    expect(passes(name, stated)).toBe(allowed);
  }); // prettier-ignore

  it('are chosen from the European kind where nobody chose', () => {
    expect(americanNameOf('couverture')).toBe('sweet_chocolate');
    expect(americanNameOf('milk_couverture')).toBe('milk_chocolate');
    expect(americanNameOf('white_chocolate')).toBe('white_chocolate');
    expect(americanNameOf('drinking_chocolate')).toBe(null);
  });
});

const dark = (more: Partial<Specification> = {}): Specification => ({
  ...specify(part('dark chocolate'), { chocolateKind: 'chocolate' }),
  composition: readComposition(
    new JsonReader(
      {
        water: '1', fat: { cocoaButter: '24' }, sugars: { sucrose: '57' }, protein: '6', fibre: '8',
        ash: '2', other: '2', cocoaSolids: { cocoaButter: '24', fatFreeCocoa: '15' },
      },
      '',
      [],
    ),
  ),
  ...more,
}); // prettier-ignore

describe('a bar for the United States', () => {
  const bar = (specification: Specification) => ({
    lots: [lot(specification, 100)],
    finishedG: d(100),
  });
  const named = { kind: 'chocolate', chocolate: 'chocolate' } as const;

  it('of 33 % liquor is sweet and not semisweet chocolate', () => {
    expect(americanFindings(named, bar(dark()))).toEqual([]);
    const [finding] = americanFindings({ ...named, american: 'semisweet_chocolate' }, bar(dark()));
    expect(finding).toMatchObject({ severity: 'refusal', code: 'name-not-allowed' });
    expect(inEnglish(finding?.detail ?? '')).toContain(
      'chocolate liquor is 33 %, at least 35 % is needed',
    );
  });

  it('that no one has a composition of is not passed silently', () => {
    const [finding] = americanFindings(named, bar(dark({ composition: null })));
    expect(finding).toMatchObject({ severity: 'warning', code: 'name-unchecked' });
  });

  it('with shea is no chocolate, and inside a filling it is pointed out', () => {
    const shea = part('dark chocolate', null, {
      parts: [part('shea fat', '4', { vegetableFat: 'shea' })],
    });
    const mix = bar(dark({ ingredient: shea }));
    expect(americanFindings(named, mix)[0]).toMatchObject({ code: 'name-not-allowed' });
    expect(americanFindings({ kind: 'praline' }, mix)[0]).toMatchObject({ code: 'name-unchecked' });
  });

  it('of white chocolate may not be coloured (163.124(a)(1))', () => {
    const white = part('white chocolate', null, {
      parts: [part('carmines', '1', { additive: { functionalClass: 'colour', eNumber: 'E120', carriedOver: false } })],
    }); // prettier-ignore
    const details = americanFindings(
      { kind: 'chocolate', chocolate: 'white_chocolate' },
      bar(dark({ ingredient: white })),
    ).map(({ detail }) => detail);
    expect(details.at(-1)).toContain('free of colours');
  });
});
