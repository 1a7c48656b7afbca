import fc from 'fast-check';
import { checkStock, PAGE_SIZES_MM, placeOf, type SheetStock } from '.';

const sheet: SheetStock = {
  kind: 'sheet',
  page: 'A4',
  columns: 3,
  rows: 7,
  labelWidthMm: 63.5,
  labelHeightMm: 38.1,
  leftMm: 7.2,
  topMm: 15.1,
  pitchXMm: 66,
  pitchYMm: 38.1,
  marginMm: 2,
  startAt: 1,
};

describe('placeOf', () => {
  it('goes by rows, from the first free label, and on to the next sheet', () => {
    const begun = { ...sheet, startAt: 21 };
    expect(checkStock(begun).ok).toBe(true);
    expect(placeOf(begun, 0)).toEqual({ page: 0, xMm: 7.2 + 2 * 66, yMm: 15.1 + 6 * 38.1 });
    expect(placeOf(begun, 1)).toEqual({ page: 1, xMm: 7.2, yMm: 15.1 });
  });

  it('gives each label of a roll a page of its own', () => {
    expect(placeOf({ kind: 'roll', widthMm: 62, marginMm: 2 }, 5)).toEqual({
      page: 5,
      xMm: 0,
      yMm: 0,
    });
  });

  /** Places are sums of floats; a printer's dot is a hundred thousand times as wide. */
  const ROUNDING_MM = 1e-6;

  it('never puts a label of an accepted grid over the sheet’s edge or over another', () => {
    const grid = fc.record({
      columns: fc.integer({ min: 1, max: 6 }),
      rows: fc.integer({ min: 1, max: 12 }),
      labelWidthMm: fc.integer({ min: 10, max: 120 }),
      labelHeightMm: fc.integer({ min: 10, max: 120 }),
      pitchXMm: fc.integer({ min: 10, max: 130 }),
      pitchYMm: fc.integer({ min: 10, max: 130 }),
      startAt: fc.integer({ min: 1, max: 20 }),
    });
    fc.assert(
      fc.property(grid, fc.integer({ min: 0, max: 100 }), (measures, number) => {
        const stock = { ...sheet, ...measures };
        fc.pre(checkStock(stock).ok);
        const [a, b] = [placeOf(stock, number), placeOf(stock, number + 1)];
        const [width, height] = PAGE_SIZES_MM.A4;
        expect(a.xMm + stock.labelWidthMm).toBeLessThanOrEqual(width + 0.5);
        expect(a.yMm + stock.labelHeightMm).toBeLessThanOrEqual(height + 0.5);
        const apart =
          a.page !== b.page ||
          Math.abs(a.xMm - b.xMm) >= stock.labelWidthMm - ROUNDING_MM ||
          Math.abs(a.yMm - b.yMm) >= stock.labelHeightMm - ROUNDING_MM;
        expect(apart).toBe(true);
      }),
    );
  });
});
