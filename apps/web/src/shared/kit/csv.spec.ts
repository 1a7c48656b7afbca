import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { toCsv } from './csv';

describe('tables as CSV (RFC 4180)', () => {
  it('read back as they were, with an independent reader', () => {
    const text = fc.stringMatching(/^[a-z0-9 ",;\n\u00e9]{0,12}$/);
    fc.assert(
      fc.property(fc.array(fc.tuple(text, text), { minLength: 1 }), (rows) => {
        const read: string[][] = parse(toCsv(rows), { bom: true, skip_empty_lines: false });
        expect(read).toEqual(rows.map(([a, b]) => [a, b]));
      }),
    );
  });

  it('never hand a spreadsheet a formula, and leave negative numbers alone', () => {
    expect(toCsv([['=HYPERLINK("x")', '-12.5', '+a', '@b']])).toBe(
      '\ufeff"\'=HYPERLINK(""x"")",-12.5,\'+a,\'@b\r\n',
    );
  });
});
