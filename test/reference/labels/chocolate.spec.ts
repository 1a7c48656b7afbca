import {
  chocolateFigures,
  mayClaimQuality,
  minimumPercent,
  nameFindings,
  shortfalls,
  totalCocoa,
  vegetableFatFindings,
  type ChocolateFigures,
  type LegalName,
} from '@api/domain/chocolate-law';
import {
  readComposition,
  JsonReader,
  type ChocolateKind,
  type Specification,
} from '@api/domain/specification';
import { Decimal } from '@api/domain/units';
import { inEnglish } from '@api/domain/words/say';
import { darkChocolate, lot, part, specify } from '../../support/labels/ingredients';

const d = (value: string | number): Decimal => new Decimal(value);

const figures = (stated: Partial<Record<keyof ChocolateFigures, string>>): ChocolateFigures => ({
  cocoaButter: d(stated.cocoaButter ?? 0),
  fatFreeCocoa: d(stated.fatFreeCocoa ?? 0),
  milkSolids: d(stated.milkSolids ?? 0),
  milkFat: d(stated.milkFat ?? 0),
  hazelnuts: d(stated.hazelnuts ?? 0),
  nuts: d(stated.nuts ?? stated.hazelnuts ?? 0),
  sweeteners: d(stated.sweeteners ?? 0),
});

const chocolate = (kind: ChocolateKind = 'chocolate'): Specification => ({
  ...specify(darkChocolate(), { chocolateKind: kind }),
  composition: readComposition(
    new JsonReader(
      {
        water: '1', fat: { cocoaButter: '24' }, sugars: { sucrose: '57' }, protein: '6', fibre: '8',
        ash: '2', other: '2', cocoaSolids: { cocoaButter: '24', fatFreeCocoa: '16' },
      },
      '',
      [],
    ),
  ),
}); // prettier-ignore

const product = (chocolateG: string, otherG: string) => ({
  lots: [lot(chocolate(), chocolateG), lot(specify(part('fondant')), otherG)],
  finishedG: d(chocolateG).plus(otherG),
});
const passes = (name: LegalName, chocolateG: string, otherG: string): boolean =>
  nameFindings(name, product(chocolateG, otherG), d(chocolateG)).every(
    ({ severity }) => severity === 'note',
  );

describe('Directive 2000/36/EC, Annex I (by the French decree 76-692 and SI 2003/1659)', () => {
  it.each([
    ['3.1', '8.9', true],
    ['2.9', '9.1', false],
    ['3.0', '9.0', true],
  ])('filled chocolate and praline: %s g shell and %s g filling: %s', (shell, filling, allowed) => {
    expect(passes({ kind: 'filled_chocolate' }, shell, filling)).toBe(allowed);
    expect(passes({ kind: 'praline' }, shell, filling)).toBe(allowed);
  });

  it('a filled chocolate is judged by its outer part when that is recorded', () => {
    const [finding] = nameFindings({ kind: 'filled_chocolate' }, product('6', '6'), d('2.9'));
    expect(inEnglish(finding?.detail ?? '')).toContain('24.17 %');
  });

  it('a filled chocolate whose shell nobody weighed waits for a person', () => {
    const [finding] = nameFindings({ kind: 'filled_chocolate' }, product('6', '6'), null);
    expect(finding).toMatchObject({ severity: 'decision', code: 'shell-unrecorded' });
  });

  it.each([
    ['60', '40', true],
    ['59.9', '40.1', false],
  ])('%s g chocolate and %s g other edible matter: %s', (base, other, allowed) => {
    expect(passes({ kind: 'chocolate', chocolate: 'chocolate' }, base, other)).toBe(allowed);
  });

  it.each([
    ['gianduja', '19.9', false],
    ['gianduja', '20', true],
    ['gianduja', '40', true],
    ['gianduja', '40.1', false],
    ['milk_gianduja', '14.9', false],
    ['milk_gianduja', '15', true],
  ] as const)('%s with %s %% hazelnuts: %s', (kind, hazelnuts, allowed) => {
    const base = { cocoaButter: '24', fatFreeCocoa: '8', hazelnuts };
    const milk = kind === 'milk_gianduja' ? { ...base, milkSolids: '10' } : base;
    expect(shortfalls(kind, figures(milk)).length === 0).toBe(allowed);
  });

  it('couverture of 36 % cocoa and 5 % fat-free cocoa is no plain chocolate', () => {
    const couverture = figures({ cocoaButter: '31', fatFreeCocoa: '5' });
    expect(shortfalls('couverture', couverture)).toEqual([]);
    expect(shortfalls('chocolate', couverture)).toEqual([
      'dry fat-free cocoa is 5 %, at least 14 % is needed',
    ]);
  });

  it('milk chocolate with 24.9 % total fat fails on it alone', () => {
    const milk = figures({ cocoaButter: '21.4', fatFreeCocoa: '3.6', milkSolids: '14', milkFat: '3.5' });
    expect(shortfalls('milk_chocolate', milk)).toEqual([
      'cocoa butter and milk fat together is 24.9 %, at least 25 % is needed',
    ]);
  }); // prettier-ignore

  it.each([
    ['white_chocolate', { cocoaButter: '20', milkSolids: '14', milkFat: '3.5' }],
    ['family_milk_chocolate', { cocoaButter: '20', fatFreeCocoa: '2.5', milkSolids: '20', milkFat: '5' }],
    ['milk_couverture', { cocoaButter: '27.5', fatFreeCocoa: '2.5', milkSolids: '14', milkFat: '3.5' }],
    ['chocolate_vermicelli', { cocoaButter: '18', fatFreeCocoa: '14' }],
    ['skimmed_milk_chocolate', { cocoaButter: '24', fatFreeCocoa: '2.5', milkSolids: '14', milkFat: '1' }],
  ] as const)('%s passes at its minima', (kind, stated) => {
    expect(shortfalls(kind, figures(stated))).toEqual([]);
  }); // prettier-ignore

  it('quality words need more (Article 3(5), from memory)', () => {
    expect(mayClaimQuality('chocolate', figures({ cocoaButter: '26', fatFreeCocoa: '17' }))).toBe(true); // prettier-ignore
    expect(mayClaimQuality('chocolate', figures({ cocoaButter: '25.9', fatFreeCocoa: '18' }))).toBe(false); // prettier-ignore
    expect(mayClaimQuality('couverture', figures({ fatFreeCocoa: '16' }))).toBe(true);
  });
});

describe('Directive 2000/36/EC, Article 3: cocoa solids', () => {
  it('are counted on the chocolate without its nuts: 28 g in 70 g is 40 %, not 28 %', () => {
    const bar = {
      lots: [lot({ ...chocolate() }, 70), lot(specify(part('almonds')), 30)],
      finishedG: d(100),
    };
    const inside = chocolateFigures(bar);
    expect(inside && minimumPercent(totalCocoa(inside))).toBe('40');
  });

  it('are rounded down: 69.6 % is "69 % minimum" (a promise of at least so much)', () => {
    expect(minimumPercent(d('69.6'))).toBe('69');
  });
});

describe('Directive 2000/36/EC, Article 2 and Annex II: vegetable fats', () => {
  const withFat = (percent: string, vegetableFat: 'shea' | 'other') =>
    vegetableFatFindings({
      lots: [
        lot(
          specify(part('chocolate', null, { parts: [part('fat', percent, { vegetableFat })] }), {
            chocolateKind: 'chocolate',
          }),
          100,
        ),
      ],
      finishedG: d(100),
    }).length;

  it('up to 5 % of six plants, none of any other', () => {
    expect([withFat('5', 'shea'), withFat('5.1', 'shea'), withFat('1', 'other')]).toEqual([
      0, 1, 1,
    ]);
  });
});
