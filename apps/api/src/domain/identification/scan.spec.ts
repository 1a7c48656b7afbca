import { Temporal } from 'temporal-polyfill';
import {
  DEFAULT_LOT_PATTERN,
  GROUP_SEPARATOR,
  nextCode,
  recogniseScan,
  thingPattern,
  THING_PREFIXES,
  withCheckDigit,
  type ScanContext,
  type Thing,
} from '.';

const today = Temporal.PlainDate.from('2026-11-25');
const context: ScanContext = {
  today,
  lotPattern: DEFAULT_LOT_PATTERN,
  gs1CompanyPrefix: '9501234',
};
const lot = nextCode(DEFAULT_LOT_PATTERN, today, 9).code;

describe('recogniseScan', () => {
  it.each([
    lot,
    lot.toLowerCase(),
    ` ${lot}\r\n`,
    `L${lot}`,
    `L ${lot}`,
    `LOT ${lot}`,
    lot.replaceAll('0', 'O').replaceAll('1', 'I'),
    `]Q1${lot}`,
  ])('knows the lot code typed as %j', (text) => {
    expect(recogniseScan(text, context)).toEqual({ kind: 'lot', code: lot });
  });

  it.each(Object.keys(THING_PREFIXES) as Thing[])('knows the code of a %s', (thing) => {
    const { code } = nextCode(thingPattern(thing), today, 41);
    expect(recogniseScan(code, context)).toEqual({ kind: thing, code });
  });

  it('reads a supplier’s symbol into what goods-in needs', () => {
    const text = ']d20109506000134352' + '17270300' + '3102001250' + '10AB-7';
    const read = recogniseScan(`${text}${GROUP_SEPARATOR}3012`, context);
    expect(read).toMatchObject({
      kind: 'supplier',
      facts: { gtin: '09506000134352', lotCode: 'AB-7', count: 12 },
    });
    if (read.kind !== 'supplier') throw new Error(read.kind);
    expect(read.facts.useBy?.toString()).toBe('2027-03-31');
    expect(read.facts.netMassG?.toString()).toBe('12500');
  });

  it('says why when a symbol holds an element that does not exist', () => {
    const read = recogniseScan(']d20109506000134352891234', context);
    expect(read).toMatchObject({ kind: 'unknown', why: 'No GS1 identifier begins with 8912.' });
  });

  it('reads it as well without symbology identifier, in brackets and as a link', () => {
    for (const text of [
      '010950600013435215270228' + '10AB-7',
      '(01)09506000134352(15)270228(10)AB-7',
      'https://example.test/01/09506000134352/10/AB-7?15=270228',
    ]) {
      expect(recogniseScan(text, context)).toMatchObject({
        kind: 'supplier',
        facts: { gtin: '09506000134352', lotCode: 'AB-7' },
      });
    }
  });

  it('knows a box of its own by the company prefix', () => {
    const gtin = withCheckDigit('0950123400001');
    const text = `(01)${gtin}(15)270228(10)${lot}`;
    expect(recogniseScan(text, context)).toMatchObject({ kind: 'box', lotCode: lot });
    expect(recogniseScan(text, { ...context, gs1CompanyPrefix: undefined })).toMatchObject({
      kind: 'supplier',
    });
  });

  it('tells a product number from a number of the till', () => {
    expect(recogniseScan('4006381333931', context)).toEqual({
      kind: 'product',
      gtin: '04006381333931',
    });
    expect(recogniseScan('2000417928759', context)).toEqual({
      kind: 'till',
      number: '2000417928759',
    });
  });

  it.each(['', '   ', 'cream', '(01)123', 'https://example.test/', '😀', 'x'.repeat(5000)])(
    'says that it does not know %j and why',
    (text) => {
      const read = recogniseScan(text, context);
      expect(read.kind).toBe('unknown');
      expect(read).toHaveProperty('why', expect.stringMatching(/\.$/));
    },
  );
});
