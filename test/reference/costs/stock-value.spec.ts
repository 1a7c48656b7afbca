import { stockReport, valueByAverage, valueByLot } from '@api/domain/stock-value';
import { purchasePriceHistory, type StockEvent } from '@api/domain/stock-value';
import { Decimal, sum } from '@api/domain/units';
import fc from 'fast-check';
import { good } from './workshop-example';

const D = (value: number | string): Decimal => new Decimal(value);
const received = (quantity: number, price: number): StockEvent => ({
  kind: 'received',
  quantity: D(quantity),
  price: D(price),
});
const used = (quantity: number): StockEvent => ({ kind: 'used', quantity: D(quantity) });

// First-in first-out and weighted average are the two cost formulas of IAS 2 (paragraph 25; from
// memory). The figures are a worked example of our own.
describe('value of what was used and of what is left', () => {
  const both = [received(10, 90), received(10, 110), used(12)];

  it('by lot: 12 kg cost 112.00 and 88.00 stay', () => {
    const value = good(valueByLot(both));
    expect([value.usedCost.toFixed(2), value.leftValue.toFixed(2)]).toEqual(['112.00', '88.00']);
  });

  it('by average: 12 kg cost 120.00 and 80.00 stay', () => {
    const value = good(valueByAverage(both));
    expect([value.usedCost.toFixed(2), value.leftValue.toFixed(2)]).toEqual(['120.00', '80.00']);
  });

  it('by average, 6 kg used before the second receipt: 116.571 43 and 83.428 57', () => {
    const value = good(valueByAverage([received(10, 90), used(6), received(10, 110), used(6)]));
    expect(value.usedCost.toFixed(5)).toBe('116.57143');
    expect(value.leftValue.toFixed(5)).toBe('83.42857');
  });

  it('refuses to use what never came in', () => {
    const value = valueByLot([received(1, 1), used(2)]);
    expect(value.ok ? '' : value.refusal.code).toBe('used-more-than-received');
  });

  it('loses no cent either way: used and left are what was paid', () => {
    const steps = fc.array(
      fc.tuple(
        fc.integer({ min: 1, max: 999 }),
        fc.integer({ min: 0, max: 99_999 }),
        fc.integer({ min: 0, max: 100 }),
      ),
      { minLength: 1, maxLength: 10 },
    );
    fc.assert(
      fc.property(steps, (rows) => {
        let onHand = 0;
        const events = rows.flatMap(([quantity, cents, percent]): StockEvent[] => {
          onHand += quantity;
          const taken = Math.floor((onHand * percent) / 100);
          onHand -= taken;
          return [
            { kind: 'received', quantity: D(quantity), price: D(cents).dividedBy(100) },
            used(taken),
          ];
        });
        const paid = sum(rows.map(([, cents]) => D(cents).dividedBy(100)));
        const byLot = good(valueByLot(events));
        expect(byLot.usedCost.plus(byLot.leftValue).equals(paid)).toBe(true);
        expect(byLot.leftQuantity.toNumber()).toBe(onHand);
        const average = good(valueByAverage(events));
        expect(average.usedCost.plus(average.leftValue).toFixed(15)).toBe(paid.toFixed(15));
      }),
    );
  });
});

describe('the stock report', () => {
  const lot = (over: object) => ({
    lot: 'a',
    item: 'dark',
    quantity: D(5),
    value: D(10),
    since: '2026-10-01',
    held: false,
    ...over,
  });
  const limits = { slowAfterDays: 30, expiringWithinDays: 7 };

  it('names expired, expiring and slow lots, the date itself being the last good day', () => {
    const report = stockReport(
      [
        lot({ lot: 'a', lastDay: '2026-11-09' }),
        lot({ lot: 'b', lastDay: '2026-11-10', lastTaken: '2026-11-01' }),
        lot({ lot: 'c', lastDay: '2026-11-17', lastTaken: '2026-11-01' }),
        lot({ lot: 'd', lastDay: '2026-11-18', lastTaken: '2026-11-01', held: true, item: 'milk' }),
      ],
      '2026-11-10',
      limits,
    );
    expect(report.lines.map(({ state }) => state)).toEqual([
      'expired',
      'expiring',
      'expiring',
      'good',
    ]);
    expect(report.lines.map(({ slow }) => slow)).toEqual([true, false, false, false]);
    expect(
      [
        report.value,
        report.expiredValue,
        report.expiringValue,
        report.slowValue,
        report.heldValue,
      ].map((v) => v.toString()),
    ).toEqual(['40', '10', '20', '10', '10']);
    expect(report.byItem.map(({ item, value }) => [item, value.toString()])).toEqual([
      ['dark', '30'],
      ['milk', '10'],
    ]);
  });
});

it('shows how the price per kg moved, supplier by supplier', () => {
  const buy = (day: string, supplier: string, price: number) => ({
    item: 'dark',
    supplier,
    day,
    quantity: D(5000),
    price: D(price),
    unit: 'g' as const,
  });
  const points = purchasePriceHistory([
    buy('2026-03-01', 'A', 60),
    buy('2026-01-01', 'A', 50),
    buy('2026-02-01', 'B', 70),
  ]);
  expect(points.map(({ unitPrice }) => unitPrice.toFixed(2))).toEqual(['10.00', '14.00', '12.00']);
  expect(points.map(({ changePercent }) => changePercent?.toFixed(0))).toEqual([
    undefined,
    undefined,
    '20',
  ]);
});
