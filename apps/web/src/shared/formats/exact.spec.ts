import fc from 'fast-check';
import { addExact, compareExact, isExact, kilogramsToGrams, subtractExact } from './exact';

const amount = fc
  .tuple(fc.boolean(), fc.nat(999_999_999), fc.nat(9999))
  .map(
    ([negative, whole, parts]) =>
      `${negative ? '-' : ''}${whole}.${String(parts).padStart(4, '0')}`,
  );

describe('exact sums of decimal strings', () => {
  it('adds tenths that floats cannot', () => {
    expect(addExact('0.1', '0.2')).toBe('0.3');
    expect(subtractExact('1250.500', '250.125')).toBe('1000.375');
  });

  it('keeps the sign of small negative amounts', () => {
    expect(subtractExact('0', '0.5')).toBe('-0.5');
  });

  it('gives back a term when the other is taken away again', () => {
    fc.assert(
      fc.property(amount, amount, (a, b) => {
        expect(compareExact(subtractExact(addExact(a, b), b), a)).toBe(0);
      }),
    );
  });

  it('does not depend on the order of the terms', () => {
    fc.assert(
      fc.property(amount, amount, amount, (a, b, c) => {
        expect(addExact(a, b, c)).toBe(addExact(c, a, b));
      }),
    );
  });

  it('moves the point from kilograms to grams', () => {
    expect(kilogramsToGrams('2.5')).toBe('2500');
    expect(kilogramsToGrams('0.0125')).toBe('12.5');
  });

  it('refuses what is not a decimal', () => {
    expect(isExact('1e3')).toBe(false);
    expect(isExact('')).toBe(false);
    expect(() => addExact('12', 'x')).toThrow(RangeError);
  });
});
