import { emptyLine, lineBody, missingOf } from './line-draft';

const line = {
  ...emptyLine,
  itemId: 'i',
  supplierLotCode: 'A1',
  date: '2026-12-01',
  quantity: '1000',
  price: '4.5',
};

describe('a delivery line as it is typed', () => {
  it('names what is still missing', () => {
    expect(missingOf(emptyLine)).toEqual([
      'itemId',
      'supplierLotCode',
      'quantity',
      'price',
      'date',
    ]);
    expect(missingOf(line)).toEqual([]);
    expect(missingOf({ ...line, refused: true })).toEqual(['refusalReason']);
    expect(missingOf({ ...line, date: '', dateKind: 'none' })).toEqual([]);
  });

  it('sends one date, of the kind that stands on the carton', () => {
    expect(lineBody({ ...line, dateKind: 'useBy' })).toMatchObject({
      useBy: '2026-12-01',
      bestBefore: null,
    });
    expect(lineBody(line)).toMatchObject({ useBy: null, bestBefore: '2026-12-01' });
  });

  it('sends a reason only for a refused line', () => {
    expect(lineBody({ ...line, refusalReason: 'typed, then unticked' }).refusalReason).toBeNull();
  });
});
