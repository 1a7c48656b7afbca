import {
  checkTogether,
  GROUP_SEPARATOR,
  needsSeparator,
  readElements,
  writeElements,
  type Element,
} from '@api/domain/identification';

// Source: gs1/gs1-syntax-engine, commit 50657dbd, src/c-lib/ai.c and scandata.c, unit tests
// (Apache-2.0). ^ is FNC1. "Together" is the engine's check of associations.

const elements = (text: string): readonly Element[] => {
  const read = readElements(text);
  if (!read.ok) throw new Error(`${text}: ${read.refusal.detail}`);
  return read.value;
};

const asCaret = (items: readonly Element[]): string =>
  `^${items
    .map(
      ({ ai, value }, at) => ai + value + (at < items.length - 1 && needsSeparator(ai) ? '^' : ''),
    )
    .join('')}`;

describe('element strings that are valid', () => {
  it.each([
    ['(01)12345678901231', '^0112345678901231'],
    ['(10)12345', '^1012345'],
    ['(01)12345678901231(10)12345', '^01123456789012311012345'],
    ['(3100)123456(10)12345', '^31001234561012345'],
    ['(10)12345(11)991225', '^1012345^11991225'],
    ['(3900)12345(11)991225', '^390012345^11991225'],
    ['(10)12345\\(11)991225', '^1012345(11)991225'],
  ])('reads %s and writes it as %s', (bracketed, caret) => {
    expect(asCaret(elements(bracketed))).toBe(caret);
    expect(elements(caret)).toEqual(elements(bracketed));
  });

  it.each([
    '(00)123456789012345675',
    '(01)95012345678903(3103)000123',
    '(02)12345678901231(37)123(00)123456789012345675',
    '(21)ABC123(01)12345678901231',
    '(01)12345678901231(3925)12599(30)123',
    '(01)12345678901231(21)XYZ999(250)ABC123',
    '(400)ABC(400)ABC',
    '(01)12345678901231(8200)https://example.test/a', // (8200) from memory of the General Specifications
  ])('lets %s stand together', (text) => {
    expect(checkTogether(elements(text)).ok).toBe(true);
  });

  it('tolerates an FNC1 after an element of fixed length', () => {
    expect(elements('^0112345678901231^991234')).toEqual([
      { ai: '01', value: '12345678901231' },
      { ai: '99', value: '1234' },
    ]);
  });

  it('reads what a scanner sends for a GS1 DataMatrix', () => {
    expect(elements(`]d2011231231231233310ABC123${GROUP_SEPARATOR}99TESTING`)).toEqual([
      { ai: '01', value: '12312312312333' },
      { ai: '10', value: 'ABC123' },
      { ai: '99', value: 'TESTING' },
    ]);
  });
});

describe('element strings that are refused', () => {
  it.each([
    ['^0112345678901234', 'wrong check digit'],
    ['^011234567890123', 'too short'],
    ['(01)123456789012312(10)12345', 'too long'],
    ['(10)(11)98765', 'empty value'],
    ['(12345)12345', 'identifier too long'],
    ['(1A)12345', 'identifier not digits'],
    ['(10)12345^', 'caret in data'],
    ['(10) ', 'space in data'],
    ['(01)95012345678903(11)131313', 'month 13'],
    ['(01)12345678901231(3910)9870', 'no currency 987'],
    ['(01)12345678901231(426)987', 'no country 987'],
    ['^891234', 'no such identifier'],
    ['(17)9(90)217', 'a short date is not glued to what follows'],
    ['0112345678901231', 'no leading FNC1'],
    ['(01)12345678901231(3333)123456(3338)123456', 'no identifier (3338)'],
  ])('%s: %s', (text) => {
    expect(readElements(text)).toMatchObject({
      ok: false,
      refusal: { code: 'gs1-data-not-valid' },
    });
  });

  it.each([
    ['(10)12345', 'a lot without its item'],
    ['(21)ABC123', 'a serial without its item'],
    ['(02)12345678901231(37)123', 'contents without their SSCC'],
    ['(400)ABC(400)XYZ', 'one identifier with two values'],
    ['(00)123456789012345675(3333)123456(3335)123456', 'two of one family of measures'],
    ['(01)12345678901231(37)5', '(01) beside (37)'],
    ['(01)12345678901231(255)1234567890128', '(01) beside (255)'],
    ['(01)12345678901231(02)12345678901231(37)5(00)123456789012345675', '(01) beside (02)'],
    ['(02)12345678901231', 'contents without their count'],
    ['(37)5', 'a count without contents'],
    ['(30)5', 'a count of pieces without their item'],
    ['(3103)000123', 'a weight without its item'],
    ['(15)270228', 'a date without its item'],
    ['(01)12345678901231(3922)999', 'a price without the measure it is for'],
    ['(01)12345678901231(422)056(426)056', 'two origins of which one excludes the other'],
    ['(01)95012345678903(3103)000123(3102)000123', 'a weight in two forms'],
    ['(01)12345678901231(30)1(3922)999(3932)978999', 'a price in two forms'],
  ])('%s may not stand together: %s', (text) => {
    expect(checkTogether(elements(text)).ok).toBe(false);
  });
});

// Source: GS1 General Specifications, figure 7.8.5-2: the first two digits decide.
describe('FNC1 after an element', () => {
  it.each(['10', '21', '30', '37', '3925', '3930', '422', '8200', '240', '95'])(
    'follows (%s)',
    (ai) => {
      expect(needsSeparator(ai)).toBe(true);
    },
  );

  it.each(['00', '01', '02', '11', '13', '15', '16', '17', '20', '3103', '3202', '410', '414'])(
    'never follows (%s)',
    (ai) => {
      expect(needsSeparator(ai)).toBe(false);
    },
  );
});

describe('writing', () => {
  it('puts fixed lengths first and no separator after the last element', () => {
    const written = writeElements([
      { ai: '10', value: 'ABC' },
      { ai: '01', value: '12312312312333' },
      { ai: '15', value: '270228' },
    ]);
    expect(written).toEqual({
      ok: true,
      value: {
        bracketed: '(01)12312312312333(15)270228(10)ABC',
        message: '01123123123123331527022810ABC',
      },
    });
  });

  it('separates two elements of open length', () => {
    const written = writeElements([
      { ai: '01', value: '12312312312333' },
      { ai: '10', value: 'ABC' },
      { ai: '21', value: '7' },
    ]);
    expect(written).toMatchObject({
      value: { message: `011231231231233310ABC${GROUP_SEPARATOR}217` },
    });
  });
});
