import { fullYear, readElements, readGs1Date, writeGs1Date } from '@api/domain/identification';
import { Temporal } from 'temporal-polyfill';

const today = Temporal.PlainDate.from('2026-11-25');
const read = (text: string, on = today): string | undefined => {
  const day = readGs1Date(text, on);
  return day.ok ? day.value.toString() : undefined;
};

// Source: GS1 General Specifications, 7.12 (century) and 3.4 (day 00).
describe('dates of GS1 elements', () => {
  it.each([
    ['280200', '2028-02-29'],
    ['270200', '2027-02-28'],
    ['270600', '2027-06-30'],
    ['271200', '2027-12-31'],
  ])('%s with day 00 is the end of the month, %s', (text, day) => {
    expect(read(text)).toBe(day);
  });

  it.each([
    [76, 2026, 2076],
    [77, 2026, 1977],
    [99, 2026, 1999],
    [0, 2026, 2000],
    [26, 2026, 2026],
    [5, 2055, 2105],
    [6, 2055, 2006],
  ])('year %d read in %d is %d', (twoDigits, current, year) => {
    expect(fullYear(twoDigits, current)).toBe(year);
  });

  // Vectors of gs1/gs1-syntax-dictionary, commit ff2eb4bf, src/lint_yymmd0.c (Apache-2.0).
  it.each(['200229', '240229', '000229', '200600'])('%s is a date', (text) => {
    expect(readElements(`(11)${text}`).ok).toBe(true);
    expect(read(text)).toBeDefined();
  });

  it.each(['210229', '200230', '200431', '200010', '201310', '1111111', 'x00131'])(
    '%s is no date',
    (text) => {
      expect(readElements(`(11)${text}`).ok).toBe(false);
      expect(read(text)).toBeUndefined();
    },
  );

  it('writes the real day, never 00', () => {
    expect(writeGs1Date(Temporal.PlainDate.from('2028-02-29'))).toBe('280229');
  });

  it('comes back to the same day within the century window', () => {
    for (let ahead = -49; ahead <= 50; ahead += 1) {
      const day = today.add({ years: ahead });
      expect(read(writeGs1Date(day))).toBe(day.toString());
    }
  });
});
