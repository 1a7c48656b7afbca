import { Decimal, apportion, roundTo, sum } from '.';

describe('apportion', () => {
  it('keeps the total when three parts share ten', () => {
    const parts = apportion(
      new Decimal('10.00'),
      [1, 1, 1].map((n) => new Decimal(n)),
      2,
    );
    expect(parts.map((part) => part.toFixed(2))).toEqual(['3.34', '3.33', '3.33']);
    expect(sum(parts).toFixed(2)).toBe('10.00');
  });

  it('refuses weights that are all zero', () => {
    expect(() => apportion(new Decimal(1), [new Decimal(0)], 2)).toThrow(RangeError);
  });
});

describe('roundTo', () => {
  it('rounds a tie up', () => {
    expect(roundTo(new Decimal('0.125'), 2).toFixed(2)).toBe('0.13');
  });
});
