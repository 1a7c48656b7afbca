import { shortfalls, type ChocolateFigures } from '@api/domain/chocolate-law';
import { CHOCOLATE_KINDS, type ChocolateKind } from '@api/domain/specification';
import { Decimal } from '@api/domain/units';

/*
 * Source: Directive 2000/36/EC, Annex I Part A, points 2 to 6, by the full text of the French decree
 * 76-692 (Annex I) and of SI 2003/1659 (Schedule 1). Columns: total dry cocoa, cocoa butter, dry
 * fat-free cocoa, dry milk solids, milk fat, cocoa butter and milk fat together. A dash is no rule.
 * The Directive's powders count cocoa powder; dry cocoa is held to the same figure, the safe side.
 */
const TABLE: Readonly<Partial<Record<ChocolateKind, string>>> = {
  chocolate: '35 18 14 - - -',
  chocolate_vermicelli: '32 12 14 - - -',
  couverture: '35 31 2.5 - - -',
  gianduja: '32 - 8 - - -',
  milk_chocolate: '25 - 2.5 14 3.5 25',
  milk_chocolate_vermicelli: '20 - - 12 - 12',
  milk_couverture: '25 - 2.5 14 3.5 31',
  milk_gianduja: '- - - 10 - -',
  cream_chocolate: '25 - 2.5 14 5.5 25',
  skimmed_milk_chocolate: '25 - 2.5 14 - 25',
  family_milk_chocolate: '20 - 2.5 20 5 25',
  white_chocolate: '- 20 - 14 3.5 -',
  powdered_chocolate: '32 - - - - -',
  drinking_chocolate: '25 - - - - -',
};

const COLUMNS = ['total', 'butter', 'fatFree', 'milk', 'milkFat', 'fats'] as const;
type Column = (typeof COLUMNS)[number];

const d = (value: string | number): Decimal => new Decimal(value);

/** Plenty of everything, with nuts in range, but exactly `value` in one column. */
const figuresWith = (kind: ChocolateKind, column: Column, value: Decimal): ChocolateFigures => {
  const gianduja = kind.includes('gianduja');
  const plenty = {
    cocoaButter: d(40), fatFreeCocoa: d(40), milkSolids: d(kind === 'gianduja' ? 5 : 40),
    milkFat: d(kind === 'skimmed_milk_chocolate' ? 1 : 10), sweeteners: d(0),
    hazelnuts: d(gianduja ? 25 : 0), nuts: d(gianduja ? 25 : 0),
  }; // prettier-ignore
  switch (column) {
    case 'total': {
      // The part that has its own minimum keeps to it; the other makes up the total.
      const least = (TABLE[kind] ?? '').split(' ')[1] ?? '-';
      const cocoaButter = least === '-' ? value.minus(d(15).lessThan(value) ? 15 : 0) : d(least);
      return { ...plenty, cocoaButter, fatFreeCocoa: value.minus(cocoaButter) };
    }
    case 'butter':
      return { ...plenty, cocoaButter: value };
    case 'fatFree':
      return { ...plenty, fatFreeCocoa: value };
    case 'milk':
      return { ...plenty, milkSolids: value };
    case 'milkFat':
      return { ...plenty, milkFat: value };
    case 'fats':
      return { ...plenty, cocoaButter: value.minus(plenty.milkFat) };
  }
};

const cases = CHOCOLATE_KINDS.flatMap((kind) => {
  const minima = (TABLE[kind] ?? '').split(' ');
  return COLUMNS.flatMap((column, index) => {
    const least = minima[index] ?? '-';
    return least === '-' ? [] : [[kind, column, least] as const];
  });
});

describe('Directive 2000/36/EC, Annex I: every minimum', () => {
  it('stands for every kind there is', () => {
    expect(Object.keys(TABLE).sort()).toEqual([...CHOCOLATE_KINDS].sort());
  });

  it.each(cases)('%s: %s at least %s %%', (kind, column, least) => {
    const WORDS: Readonly<Record<Column, string>> = {
      total: 'total dry cocoa is', butter: 'cocoa butter is', fatFree: 'dry fat-free cocoa is',
      milk: 'dry milk solids is', milkFat: 'milk fat is',
      fats: 'cocoa butter and milk fat together is',
    }; // prettier-ignore
    const said = (value: Decimal): boolean =>
      shortfalls(kind, figuresWith(kind, column, value)).some((text) =>
        text.startsWith(WORDS[column]),
      );
    expect(said(d(least))).toBe(false);
    expect(said(d(least).minus('0.01'))).toBe(true);
  });

  it('maxima: milk in skimmed milk chocolate, milk and nuts in gianduja', () => {
    const over = (kind: ChocolateKind, more: Partial<ChocolateFigures>): string[] =>
      shortfalls(kind, { ...figuresWith(kind, 'butter', d(40)), ...more });
    expect(over('skimmed_milk_chocolate', { milkFat: d('1.01') })).toHaveLength(1);
    expect(over('gianduja', { milkSolids: d('5.01') })).toHaveLength(1);
    expect(over('gianduja', { nuts: d('60.01') })).toHaveLength(1);
    expect(over('milk_gianduja', { nuts: d(60), hazelnuts: d(40) })).toEqual([]);
    expect(over('milk_gianduja', { hazelnuts: d('40.01'), nuts: d('40.01') })).toHaveLength(1);
  });
});
