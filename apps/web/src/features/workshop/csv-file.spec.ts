import { csvText } from './csv-file';

const fileOf = (...bytes: number[]): Blob => new Blob([new Uint8Array(bytes)]);

describe('the text of a CSV file', () => {
  it('is read as UTF-8, without its mark', async () => {
    expect(await csvText(fileOf(0xef, 0xbb, 0xbf, 0xc3, 0xa9))).toBe('é');
  });

  it('is read as the old code page of spreadsheets when it is no UTF-8', async () => {
    expect(await csvText(fileOf(0x70, 0xe2, 0x74, 0x65))).toBe('pâte');
  });
});
