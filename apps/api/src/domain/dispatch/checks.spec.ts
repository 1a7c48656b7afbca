import { Temporal } from 'temporal-polyfill';
import { Decimal } from '../units';
import { checkForSale, checkReturn, type LotToSend } from '.';

const today = Temporal.PlainDate.from('2026-11-25');
const box: LotToSend = {
  code: '261120-0038',
  itemName: 'Box of nine',
  itemKind: 'box',
  bestBefore: today.add({ days: 14 }),
  useBy: null,
};
const hotel = { name: 'Hotel of the Two Invented Bridges', minimumLifeDays: 14 };
const counter = { name: 'the counter', minimumLifeDays: 0 };

describe('checkForSale', () => {
  it('sends what has the life that the customer asks for, to the day', () => {
    expect(checkForSale(box, hotel, today, null)).toMatchObject({ ok: true });
    expect(checkForSale(box, hotel, today.add({ days: 1 }), null)).toMatchObject({
      refusal: { code: 'life-too-short', facts: { daysLeft: 13, minimumLifeDays: 14 } },
    });
  });

  it('goes by the earlier of two dates', () => {
    const both = { ...box, useBy: today.add({ days: 3 }) };
    expect(checkForSale(both, hotel, today, null)).toMatchObject({
      refusal: { facts: { daysLeft: 3 } },
    });
  });

  it('sells over the counter on the last day, and not after it', () => {
    expect(checkForSale(box, counter, today.add({ days: 14 }), null)).toMatchObject({ ok: true });
    const late = checkForSale(box, counter, today.add({ days: 15 }), null);
    expect(late).toMatchObject({ refusal: { code: 'life-too-short' } });
  });

  it('lets a person agree to less with a reason', () => {
    const late = today.add({ days: 10 });
    expect(checkForSale(box, hotel, late, 'eaten tonight')).toMatchObject({ ok: true });
  });

  it('sells boxes and pieces only', () => {
    for (const itemKind of ['ingredient', 'filling', 'packaging'] as const) {
      const refused = checkForSale({ ...box, itemKind }, counter, today, 'whatever');
      expect(refused).toMatchObject({ refusal: { code: 'not-for-sale' } });
    }
  });
});

describe('checkReturn', () => {
  it('takes back up to what is still out', () => {
    const two = new Decimal(2);
    expect(checkReturn('L1', two, two)).toMatchObject({ ok: true });
    expect(checkReturn('L1', two, new Decimal(3))).toMatchObject({
      refusal: { code: 'returned-too-much', facts: { stillOut: '2', returned: '3' } },
    });
  });
});
