import {
  breakEvenUnits,
  lowestBeforeReduction,
  marginOfMarkUp,
  marginPercent,
  marginWarning,
  markUpOfMargin,
  netPriceFor,
  priceOn,
  priceWithEnding,
  quote,
} from '@api/domain/pricing';
import { Decimal } from '@api/domain/units';
import Big from 'big.js';
import fc from 'fast-check';
import { costOf, good } from './workshop-example';
import { totalCost } from '@api/domain/costing';

const D = (value: number | string): Decimal => new Decimal(value);
const BOX = totalCost(costOf('box'));

// Textbook arithmetic m = (P − C)/P, u = (P − C)/C; worked example of our own on a box of 5.414 01.
describe('margin and mark-up', () => {
  it('60 % margin is 13.535 01 net, which is 150 % mark-up', () => {
    expect(good(netPriceFor(BOX, { kind: 'margin', percent: D(60) })).toFixed(4)).toBe('13.5350');
    expect(good(markUpOfMargin(D(60))).toFixed(2)).toBe('150.00');
  });

  it('60 % mark-up is only 8.662 42 net and 37.5 % margin', () => {
    expect(good(netPriceFor(BOX, { kind: 'mark_up', percent: D(60) })).toFixed(4)).toBe('8.6624');
    expect(good(marginOfMarkUp(D(60))).toFixed(1)).toBe('37.5');
  });

  it('16.20 with 20 % VAT in it leaves 13.50 net and a real margin of 59.90 %', () => {
    const priced = good(
      quote(BOX, {
        list: 'counter',
        target: { kind: 'margin', percent: D(60) },
        vatPercent: D(20),
        endings: { endings: [D('0.20'), D('0.70')], step: D(1), direction: 'nearest' },
      }),
    );
    expect(priced.exactNet.times('1.2').toFixed(4)).toBe('16.2420');
    expect([priced.gross.toFixed(2), priced.net.toFixed(2), priced.vat.toFixed(2)]).toEqual([
      '16.20',
      '13.50',
      '2.70',
    ]);
    expect(priced.realMarginPercent?.toFixed(2)).toBe('59.90');
  });

  it('rounds the net price on a trade list and adds VAT to it', () => {
    const priced = good(
      quote(BOX, {
        list: 'trade',
        target: { kind: 'margin', percent: D(40) },
        vatPercent: D('5.5'),
        endings: { endings: [D('0.00'), D('0.50')], step: D(1), direction: 'up' },
      }),
    );
    expect([priced.net.toFixed(2), priced.vat.toFixed(2), priced.gross.toFixed(2)]).toEqual([
      '9.50',
      '0.52',
      '10.02',
    ]);
  });

  it('refuses a margin of 100 %', () => {
    const refused = netPriceFor(BOX, { kind: 'margin', percent: D(100) });
    expect(refused.ok ? '' : refused.refusal.code).toBe('margin-out-of-range');
  });

  it('gives back the target margin of any cost, as big.js reckons it', () => {
    Big.DP = 45;
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 10_000_000 }),
        fc.integer({ min: 0, max: 9_999 }),
        (c, m) => {
          const [cost, percent] = [D(c).dividedBy(10_000), D(m).dividedBy(100)];
          const net = good(netPriceFor(cost, { kind: 'margin', percent }));
          const referee = new Big(c)
            .div(10_000)
            .times(100)
            .div(new Big(100).minus(new Big(m).div(100)));
          expect(net.toSignificantDigits(35).toFixed()).toBe(
            D(referee.toFixed(44)).toSignificantDigits(35).toFixed(),
          );
          expect(marginPercent(net, cost)?.toFixed(20)).toBe(percent.toFixed(20));
        },
      ),
    );
  });

  it('turns a margin into a mark-up and back', () => {
    fc.assert(
      fc.property(fc.integer({ min: -5_000, max: 9_999 }), (m) => {
        const margin = D(m).dividedBy(100);
        expect(good(marginOfMarkUp(good(markUpOfMargin(margin)))).toFixed(20)).toBe(
          margin.toFixed(20),
        );
      }),
    );
  });
});

describe('price endings', () => {
  const rule = (direction: 'up' | 'down' | 'nearest') => ({
    endings: [D('0.50'), D('0.90')],
    step: D(1),
    direction,
  });
  it.each([
    ['12.91', 'up', '13.50'],
    ['12.90', 'up', '12.90'],
    ['12.91', 'down', '12.90'],
    ['12.20', 'down', '11.90'],
    ['12.20', 'nearest', '12.50'],
    ['12.19', 'nearest', '11.90'],
    ['0.10', 'down', '0.50'],
  ] as const)('%s %s becomes %s', (price, direction, expected) => {
    expect(good(priceWithEnding(D(price), rule(direction))).toFixed(2)).toBe(expected);
  });

  it('up never gives margin away, and ends as wished', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (cents) => {
        const price = D(cents).dividedBy(100);
        const shown = good(priceWithEnding(price, rule('up')));
        expect(shown.greaterThanOrEqualTo(price)).toBe(true);
        expect(['0.50', '0.90']).toContain(shown.mod(1).toFixed(2));
        expect(shown.minus(price).lessThan(1)).toBe(true);
      }),
    );
  });
});

describe('break-even and floors', () => {
  it('needs 124 boxes to earn 1000 back at 13.50 net over 5.414 01', () => {
    expect(good(breakEvenUnits(D(1000), D('13.50'), BOX)).toString()).toBe('124');
  });

  it('says so when no quantity breaks even', () => {
    const never = breakEvenUnits(D(1000), D(5), D(5));
    expect(never.ok ? '' : never.refusal.code).toBe('never-breaks-even');
  });

  it('earns the fixed cost with the answer and not with one less', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 10_000_000 }),
        fc.integer({ min: 1, max: 10_000 }),
        fc.integer({ min: 0, max: 10_000 }),
        (fixed, gain, cost) => {
          const units = good(breakEvenUnits(D(fixed), D(gain + cost), D(cost)));
          expect(units.times(gain).greaterThanOrEqualTo(fixed)).toBe(true);
          expect(units.isZero() || units.minus(1).times(gain).lessThan(fixed)).toBe(true);
        },
      ),
    );
  });

  it('warns below the floor and names the net price that holds it', () => {
    const warning = good(marginWarning(D('9.00'), BOX, D(45)));
    expect(warning?.marginPercent.toFixed(2)).toBe('39.84');
    expect(warning?.netPriceForFloor.toFixed(4)).toBe('9.8436');
    expect(good(marginWarning(D('13.50'), BOX, D(45)))).toBeUndefined();
  });
});

describe('price history', () => {
  const history = [
    { fromDay: '2026-01-01', price: D(16) },
    { fromDay: '2026-09-20', price: D(18) },
    { fromDay: '2026-10-15', price: D(17) },
  ];
  it('takes the price that began last', () => {
    expect(priceOn(history, '2026-10-14')?.toString()).toBe('18');
    expect(priceOn(history, '2026-10-15')?.toString()).toBe('17');
    expect(priceOn(history, '2025-12-31')).toBeUndefined();
  });

  // Directive 98/6/EC, Article 6a as inserted by Directive (EU) 2019/2161; from memory.
  it('quotes the lowest price of the 30 days before a reduction', () => {
    expect(lowestBeforeReduction(history, '2026-11-10')?.toString()).toBe('17');
    expect(lowestBeforeReduction(history, '2026-10-20')?.toString()).toBe('17');
    expect(lowestBeforeReduction(history, '2026-10-15')?.toString()).toBe('16');
    expect(lowestBeforeReduction(history, '2026-01-01')).toBeUndefined();
  });
});
