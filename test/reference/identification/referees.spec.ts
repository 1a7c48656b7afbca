import {
  GROUP_SEPARATOR,
  readBracketed,
  readElements,
  withCheckDigit,
  writeElements,
} from '@api/domain/identification';
import fc from 'fast-check';
import { parseBarcode, type ParsedElement } from 'gs1-barcode-parser-mod';

const SYMBOL = ']d2';

/** A second reader of element strings, written by others, against which ours is set. */
const referee = (message: string): ReadonlyMap<string, ParsedElement['data']> => {
  const parsed = parseBarcode(SYMBOL + message);
  return new Map(parsed.parsedCodeItems.map(({ ai, data }) => [ai, data]));
};

const digits = (length: number): fc.Arbitrary<string> =>
  fc
    .array(fc.integer({ min: 0, max: 9 }), { minLength: length, maxLength: length })
    .map((array) => array.join(''));

const lotCode = fc
  .array(fc.constantFrom(...'ABCDEFGHJKMNPQRSTVWXYZ0123456789-./'), { minLength: 1, maxLength: 20 })
  .map((array) => array.join(''));

const isoDay = fc
  .date({ min: new Date('2000-01-01'), max: new Date('2049-12-28'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));

describe('element strings against the package gs1-barcode-parser-mod', () => {
  it('say the same of item, lot, best-before, serial and net weight', () => {
    fc.assert(
      fc.property(
        digits(13),
        lotCode,
        isoDay,
        lotCode,
        digits(6),
        (item, lot, day, serial, mass) => {
          const gtin = withCheckDigit(item);
          const yymmdd = day.slice(2).replaceAll('-', '');
          const written = writeElements([
            { ai: '10', value: lot },
            { ai: '01', value: gtin },
            { ai: '21', value: serial },
            { ai: '15', value: yymmdd },
            { ai: '3103', value: mass },
          ]);
          if (!written.ok) throw new Error(written.refusal.detail);
          const other = referee(written.value.message);
          expect(other.get('01')).toBe(gtin);
          expect(other.get('10')).toBe(lot);
          expect(other.get('21')).toBe(serial);
          expect(other.get('3103')).toBeCloseTo(Number(mass) / 1000, 6);
          const date = other.get('15') as Date;
          // The package gives a Date at local midnight; only its day is compared.
          expect([date.getFullYear(), date.getMonth() + 1, date.getDate()]).toEqual(
            day.split('-').map(Number),
          );
          const back = readElements(SYMBOL + written.value.message);
          expect(back).toEqual(readBracketed(written.value.bracketed));
          expect(written.value.message.split(GROUP_SEPARATOR)).toHaveLength(2);
        },
      ),
      { numRuns: 1000 },
    );
  });
});
