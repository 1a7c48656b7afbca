import { formatDecimal, formatMass, formatMoney, parseDecimal } from './numbers';

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

describe('numbers as a person types them', () => {
  it('takes comma and point as the decimal sign', () => {
    expect(parseDecimal('250,5', 'fr')).toBe('250.5');
    expect(parseDecimal('250.5', 'fr')).toBe('250.5');
    expect(parseDecimal('250.5', 'en-GB')).toBe('250.5');
    expect(parseDecimal('2,5', 'en-GB')).toBe('2.5');
  });

  it('reads grouped numbers by their last sign', () => {
    expect(parseDecimal('1 250,5', 'fr')).toBe('1250.5');
    expect(parseDecimal('1,250.5', 'en')).toBe('1250.5');
    expect(parseDecimal('1.250,5', 'de')).toBe('1250.5');
  });

  it('does not guess whether 1,250 is a thousand or one and a quarter', () => {
    expect(parseDecimal('1,250', 'en-GB')).toBeUndefined();
    expect(parseDecimal('1,250', 'fr')).toBe('1.250');
  });

  it('refuses what is not a number', () => {
    expect(parseDecimal('', 'en')).toBeUndefined();
    expect(parseDecimal('abc', 'en')).toBeUndefined();
    expect(parseDecimal('1e5', 'en')).toBeUndefined();
    expect(parseDecimal('12 g', 'en')).toBeUndefined();
  });
});

describe('numbers as the screen shows them', () => {
  it('shows more digits than a float holds', () => {
    expect(formatDecimal('en', '123456789012.1234', 4)).toBe('123,456,789,012.1234');
  });

  it('shows kilograms from a thousand grams on, with the grams kept', () => {
    expect(formatMass('en', '999.500')).toBe('999.5 g');
    expect(formatMass('en', '1250.000')).toBe('1.25 kg');
    // Rounded, not cut off: the sixth tenth belongs to the next gram.
    expect(formatMass('en', '1005.600')).toBe('1.006 kg');
    expect(formatMass('en', '-1005.600')).toBe('−1.006 kg');
    expect(plain(formatMass('fr', '12345.000'))).toBe('12,345 kg');
  });

  it('shows money in the workshop’s currency and the reader’s way of writing', () => {
    expect(formatMoney('en-GB', 'EUR', '12.5000')).toBe('€12.50');
    expect(plain(formatMoney('fr', 'EUR', '1234.5'))).toBe('1 234,50 €');
  });
});
