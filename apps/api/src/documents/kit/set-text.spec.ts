import fc from 'fast-check';
import { setText, widestWord, type Line } from './set-text';

const textOf = (lines: readonly Line[]): string[] =>
  lines.map(({ fragments }) => fragments.map(({ text }) => text).join(''));

describe('setText', () => {
  it('breaks at spaces, and after a hyphen inside a word', () => {
    const lines = setText('salted butter-caramel', widestWord('caramel', 9).widthMm + 0.1, 9);
    expect(textOf(lines)).toEqual(['salted', 'butter-', 'caramel']);
  });

  it('never breaks a code', () => {
    const { widthMm } = widestWord('261125-00A7', 9);
    expect(textOf(setText('lot 261125-00A7', widthMm + 0.1, 9))).toEqual(['lot', '261125-00A7']);
  });

  it('keeps line breaks that were written', () => {
    expect(textOf(setText('a\nb\n\nc', 50, 9))).toEqual(['a', 'b', '', 'c']);
  });

  it('sets a sign that the text face lacks in another, and the rest not', () => {
    const [line] = setText('pH ≤ 5', 50, 9);
    expect(line?.fragments.map(({ face, text }) => [face, text])).toEqual([
      ['regular', 'pH '],
      ['signs', '≤'],
      ['regular', ' 5'],
    ]);
  });

  it('loses no letter and no line is wider than the column', () => {
    const words = fc.array(
      fc.string({ minLength: 1, maxLength: 30, unit: fc.constantFrom(...'abWi-/3é') }),
      {
        minLength: 1,
        maxLength: 12,
      },
    );
    fc.assert(
      fc.property(words, fc.double({ min: 12, max: 60, noNaN: true }), (parts, widthMm) => {
        const lines = setText(parts.join(' '), widthMm, 8);
        expect(textOf(lines).join('').replaceAll(' ', '')).toBe(parts.join(''));
        for (const line of lines) expect(line.widthMm).toBeLessThanOrEqual(widthMm + 0.01);
      }),
      { numRuns: 300 },
    );
  });
});
