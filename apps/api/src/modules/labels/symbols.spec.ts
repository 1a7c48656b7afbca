import type { LabelContent } from '../../domain/label';
import { RefusalError } from '../../platform/problems';
import { labelSymbols } from './symbols';

const content = (kind: 'best_before' | 'use_by'): LabelContent => ({
  market: 'EU',
  languages: ['en'],
  lotCode: '261125-0007',
  lotMark: 'L261125-0007',
  blocks: [],
  quantity: null,
  date: { words: [], date: '28/02/2027', machineDate: '2027-02-28', kind },
  nutrition: [],
  price: null,
  minXHeightMm: 1.2,
});

const GTIN = '04006381333931';
const textOf = (symbol: string, gtin: string | null, kind: 'best_before' | 'use_by') =>
  labelSymbols(symbol, gtin, content(kind)).map((drawn) => drawn.text);

describe('labelSymbols', () => {
  it('carries number, date and lot, best before as (15) and use by as (17)', () => {
    expect(textOf('gs1datamatrix', GTIN, 'best_before')).toEqual([
      `(01)${GTIN}(15)270228(10)261125-0007`,
    ]);
    expect(textOf('gs1datamatrix', GTIN, 'use_by')[0]).toContain('(17)270228');
    expect(textOf('digital_link', GTIN, 'best_before')).toEqual([
      `https://id.gs1.org/01/${GTIN}/10/261125-0007?15=270228`,
    ]);
  });

  it('gives a till its 13 digits, and a workshop without numbers its own code', () => {
    expect(textOf('ean13', GTIN, 'best_before')).toEqual(['4006381333931']);
    expect(textOf('own_qr', null, 'best_before')).toEqual(['261125-0007']);
    expect(textOf('none', null, 'best_before')).toEqual([]);
  });

  it('never puts a number of the shop’s own into a GS1 code, but into its tills’ code', () => {
    const own = '02000417928759';
    expect(() => textOf('gs1datamatrix', own, 'use_by')).toThrow(RefusalError);
    expect(() => textOf('digital_link', own, 'use_by')).toThrow(RefusalError);
    expect(textOf('ean13', own, 'use_by')).toEqual(['2000417928759']);
  });

  it('refuses a GS1 code without a number, and a case’s number at the till', () => {
    expect(() => textOf('gs1datamatrix', null, 'use_by')).toThrow(RefusalError);
    expect(() => textOf('ean13', '14006381333938', 'use_by')).toThrow(RefusalError);
  });
});
