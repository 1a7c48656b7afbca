import { smudgedCodeMatches } from '.';

const codes = ['L26-0142', 'L26-0147', 'L26-0412', 'L25-0142', 'B26-0142'];
const found = (read: string) => smudgedCodeMatches(read, codes).map((match) => match.code);

describe('smudgedCodeMatches', () => {
  it('takes the exact code first, whatever its case, blanks and dashes', () => {
    expect(smudgedCodeMatches('l260142', codes)[0]).toEqual({ code: 'L26-0142', distance: 0 });
  });

  it('takes a letter for the digit that looks like it', () => {
    expect(found('L26-OI42')[0]).toBe('L26-0142');
  });

  it('fills a sign that could not be read, and lists every lot it may be', () => {
    expect(found('L26-014?').slice(0, 2)).toEqual(['L26-0142', 'L26-0147']);
  });

  it('takes swapped neighbours for nearer than two wrong signs', () => {
    const swapped = smudgedCodeMatches('L26-0124', codes);
    expect(swapped[0]).toEqual({ code: 'L26-0142', distance: 0.5 });
  });

  it('takes a missing sign', () => {
    expect(found('L26-142')).toContain('L26-0142');
  });

  it('finds nothing for another text', () => {
    expect(found('hello')).toEqual([]);
    expect(found('')).toEqual([]);
  });
});
