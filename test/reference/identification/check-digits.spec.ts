import {
  checkDigit,
  isGln,
  isGtin,
  isSscc,
  toGtin14,
  withCheckDigit,
} from '@api/domain/identification';
import fc from 'fast-check';
import * as gtin from 'gtin';

// Source: GS1 General Specifications, 7.9.1 (standard check digit); vectors marked * are those of
// gs1/gs1-syntax-dictionary, commit ff2eb4bf, src/lint_csum.c (Apache-2.0).
describe('GS1 check digit', () => {
  it.each([
    ['0234567', '02345673'], // * GTIN-8
    ['41600033610', '416000336108'], // * GTIN-12
    ['03600029145', '036000291452'], // computed by hand: sum 58
    ['123456789012', '1234567890128'], // * GTIN-13
    ['400638133393', '4006381333931'], // computed by hand: sum 89
    ['1234567890123', '12345678901231'], // * GTIN-14
    ['9501234567890', '95012345678903'], // computed by hand: sum 117, 9 is variable measure
    ['12345678901234567', '123456789012345675'], // * SSCC
  ])('completes %s to %s', (body, full) => {
    expect(withCheckDigit(body)).toBe(full);
  });

  it.each(['12345673', '416000336109', '1234567890129', '12345678901232'])(
    'refuses %s (src/lint_csum.c)',
    (text) => {
      expect(isGtin(text)).toBe(false);
      expect(toGtin14(text)).toMatchObject({ ok: false, refusal: { code: 'gtin-not-valid' } });
    },
  );

  it('knows an SSCC and a GLN by the same rule', () => {
    expect(isSscc('123456789012345675')).toBe(true);
    expect(isSscc('123456789012345670')).toBe(false); // src/lint_csum.c
    expect(isGln('1234567890128')).toBe(true);
    expect(isGln('02345673')).toBe(false);
  });

  it('is not changed by zeros in front, and is by the indicator digit', () => {
    expect(toGtin14('4006381333931')).toEqual({ ok: true, value: '04006381333931' });
    expect(checkDigit('0400638133393')).toBe('1');
    expect(checkDigit('1400638133393')).not.toBe('1');
  });

  it('agrees with the package gtin over random numbers of every length', () => {
    const digits = fc
      .constantFrom(8, 12, 13, 14)
      .chain((length) =>
        fc.array(fc.integer({ min: 0, max: 9 }), { minLength: length, maxLength: length }),
      );
    fc.assert(
      fc.property(digits, (array) => {
        const text = array.join('');
        expect(isGtin(text)).toBe(gtin.isValid(text));
        expect(gtin.isValid(withCheckDigit(text.slice(0, -1)))).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});
