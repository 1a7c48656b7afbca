import { Temporal } from 'temporal-polyfill';
import { Decimal } from '../units';
import { type GoodsLine, receiveLine } from '.';

const today = Temporal.PlainDate.from('2026-11-25');
const cream: GoodsLine = {
  itemName: 'Cream 35 %',
  itemKind: 'ingredient',
  unit: 'g',
  perishable: true,
  warmestTempC: new Decimal(6),
  pieceMassG: null,
  supplierLotCode: 'CR-77',
  quantity: new Decimal('5000'),
  price: new Decimal('21.00'),
  tempC: new Decimal('4.2'),
  bestBefore: null,
  useBy: today.add({ days: 10 }),
  refusalReason: null,
  specification: { allergensUnknown: [] },
};

describe('receiveLine', () => {
  it('puts an accepted line on hand with its weight and price', () => {
    const received = receiveLine(cream, today);
    expect(received).toMatchObject({ ok: true, value: { refused: false, holds: [] } });
    if (received.ok) expect(received.value.made.massG.toFixed(3)).toBe('5000.000');
  });

  it('records a refused line with nothing on hand', () => {
    const received = receiveLine({ ...cream, refusalReason: 'carton torn' }, today);
    expect(received).toMatchObject({ ok: true, value: { refused: true } });
    if (received.ok) expect(received.value.made.quantity.isZero()).toBe(true);
  });

  it.each([
    ['no_specification', { specification: null }],
    ['unknown_allergen', { specification: { allergensUnknown: ['hazelnut'] } }],
    ['temperature', { tempC: new Decimal('6.1') }],
  ])('holds by itself for %s', (kind, change) => {
    expect(receiveLine({ ...cream, ...change }, today)).toMatchObject({
      ok: true,
      value: { holds: [{ kind }] },
    });
  });

  it('takes goods exactly at the temperature limit', () => {
    expect(receiveLine({ ...cream, tempC: new Decimal(6) }, today)).toMatchObject({
      value: { holds: [] },
    });
  });

  it.each([
    ['goods-past-use-by', { useBy: today.subtract({ days: 1 }) }],
    ['goods-dates-missing', { useBy: null }],
    ['temperature-needed', { tempC: null }],
    ['quantity-not-positive', { quantity: new Decimal(0) }],
  ])('refuses with %s', (code, change) => {
    expect(receiveLine({ ...cream, ...change }, today)).toMatchObject({
      ok: false,
      refusal: { code },
    });
  });

  it('counts packaging without grams of food', () => {
    const boxes: GoodsLine = {
      ...cream,
      itemKind: 'packaging',
      unit: 'pc',
      quantity: new Decimal(200),
      perishable: false,
      specification: null,
    };
    const received = receiveLine(boxes, today);
    if (received.ok) expect(received.value.made.massG.isZero()).toBe(true);
    expect(received).toMatchObject({ value: { holds: [] } });
  });
});
