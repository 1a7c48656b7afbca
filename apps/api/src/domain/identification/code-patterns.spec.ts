import { Temporal } from 'temporal-polyfill';
import {
  checkCodePattern,
  codeStem,
  DEFAULT_LOT_PATTERN,
  fitsLotElement,
  isCodeOf,
  nextCode,
  sequenceOf,
  thingPattern,
} from '.';

const day = Temporal.PlainDate.from('2026-11-25');

describe('nextCode', () => {
  it('numbers the lots of a day and never ends in a character that is misread', () => {
    let last = 0;
    const codes = new Set<string>();
    for (let made = 0; made < 3000; made += 1) {
      const next = nextCode(DEFAULT_LOT_PATTERN, day, last);
      expect(next.sequence).toBeGreaterThan(last);
      expect(next.code).toMatch(/^261125-[0-9A-HJKMNP-TV-Z]{4}$/);
      expect(fitsLotElement(next.code)).toBe(true);
      expect(isCodeOf(DEFAULT_LOT_PATTERN, next.code)).toBe(true);
      expect(sequenceOf(codeStem(DEFAULT_LOT_PATTERN, day), next.code)).toBe(next.sequence);
      codes.add(next.code);
      last = next.sequence;
    }
    expect(codes.size).toBe(3000);
  });

  it('grows by a place when three are used up', () => {
    expect(nextCode(DEFAULT_LOT_PATTERN, day, 32 ** 3 - 1).code).toMatch(/^261125-[0-9A-Z]{5}$/);
  });

  it('gives moulds a tag without a day', () => {
    expect(nextCode(thingPattern('mould'), day, 0).code).toMatch(/^M-001[0-9A-Z]$/);
  });
});

describe('sequenceOf', () => {
  it('knows nothing of a code of another day or with a wrong check character', () => {
    const { code } = nextCode(DEFAULT_LOT_PATTERN, day, 0);
    const stem = codeStem(DEFAULT_LOT_PATTERN, day);
    expect(sequenceOf(codeStem(DEFAULT_LOT_PATTERN, day.add({ days: 1 })), code)).toBeUndefined();
    expect(
      sequenceOf(stem, `${code.slice(0, -1)}${code.endsWith('7') ? '8' : '7'}`),
    ).toBeUndefined();
  });
});

describe('checkCodePattern', () => {
  it.each([DEFAULT_LOT_PATTERN, 'Z{YY}{MM}{SEQ}{CHECK}', '{SEQ}{CHECK}'])('takes %s', (pattern) => {
    expect(checkCodePattern(pattern)).toEqual({ ok: true, value: pattern });
  });

  it.each([
    ['LOT{SEQ}{CHECK}', 'letters that are misread'],
    ['{YY}{SEQ}', 'no check character'],
    ['{YY}{CHECK}', 'no number'],
    ['{SEQ}-{SEQ}{CHECK}', 'two numbers'],
    ['{YY}{YY}{SEQ}{CHECK}', 'one part of the date twice'],
    ['M-{SEQ}{CHECK}', 'the prefix of a mould'],
    ['ab{SEQ}{CHECK}', 'small letters'],
    ['A {SEQ}{CHECK}', 'a space, which GS1 data never has'],
    ['{JJ}{SEQ}{CHECK}', 'a field that does not exist'],
    ['ABCDEFGH-{YY}{MM}{DD}{SEQ}{CHECK}', 'too long for (10)'],
  ])('refuses %s: %s', (pattern) => {
    expect(checkCodePattern(pattern)).toMatchObject({
      refusal: { code: 'code-pattern-not-valid' },
    });
  });
});
