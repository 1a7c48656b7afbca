import fc from 'fast-check';
import { Readable } from 'node:stream';
import { linesOf } from './lines';

const collect = async (chunks: readonly string[]): Promise<string[]> => {
  const lines: string[] = [];
  const source = Readable.from(chunks.map((chunk) => Buffer.from(chunk)));
  for await (const line of linesOf(source)) lines.push(line.toString('utf8'));
  return lines;
};

describe('lines of a stream', () => {
  it('are the same however the chunks fall', async () => {
    const text = fc.array(fc.constantFrom('a', 'ç', '\n', '\\.', '\r'), { maxLength: 40 });
    await fc.assert(
      fc.asyncProperty(text, fc.array(fc.nat(5)), async (parts, sizes) => {
        const whole = Buffer.from(parts.join(''));
        const chunks: Buffer[] = [];
        let from = 0;
        for (const size of sizes) {
          chunks.push(whole.subarray(from, from + size));
          from += size;
        }
        chunks.push(whole.subarray(from));
        const lines: Buffer[] = [];
        for await (const line of linesOf(Readable.from(chunks))) lines.push(line);
        const expected = parts.join('').split('\n');
        if (expected.at(-1) === '') expected.pop();
        expect(lines.map((line) => line.toString('utf8'))).toEqual(expected);
      }),
    );
  });

  it('keep empty lines, and a last one without its end', async () => {
    expect(await collect(['a\n', '\n', 'b'])).toEqual(['a', '', 'b']);
    expect(await collect([])).toEqual([]);
  });
});
