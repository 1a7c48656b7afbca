import { addVat, splitGross, unitPriceOf, vatRateOn, vatTotals } from '@api/domain/pricing';
import { Decimal, sum } from '@api/domain/units';
import Big from 'big.js';
import fc from 'fast-check';
import { good } from './workshop-example';

const D = (value: number | string): Decimal => new Decimal(value);
const NO_EXEMPTION = { exemptMixedAssortments: false };

describe('price per kg: Directive 98/6/EC, Articles 3 and 5', () => {
  it.each([
    ['6.90', '125', '55.20'],
    ['2.49', '45', '55.33'],
    ['4.50', '80', '56.25'],
    ['1.20', '9', '133.33'],
  ])('%s for %s g is %s a kg (worked example)', (price, grams, expected) => {
    const stated = unitPriceOf(D(price), D(grams), false, NO_EXEMPTION);
    expect(stated.pricePerKg.toFixed(2)).toBe(expected);
    expect(stated.duty).toBe('required');
  });

  it('may be left out when it equals the price (Article 3)', () => {
    expect(unitPriceOf(D(39), D(1000), false, NO_EXEMPTION).duty).toBe('same_as_price');
  });

  // Price indication in Germany, packs under 10 g: from memory, a setting of the market.
  it('is exempt below the weight that the setting names', () => {
    const rule = { exemptBelowG: D(10), exemptMixedAssortments: false };
    expect(unitPriceOf(D('1.20'), D(9), false, rule).duty).toBe('below_weight');
    expect(unitPriceOf(D('1.20'), D(10), false, rule).duty).toBe('required');
  });

  it('is exempt for a mixed assortment only where the setting says so (Article 5)', () => {
    expect(unitPriceOf(D(12), D(125), true, { exemptMixedAssortments: true }).duty).toBe(
      'mixed_assortment',
    );
    expect(unitPriceOf(D(12), D(125), true, NO_EXEMPTION).duty).toBe('required');
  });
});

describe('VAT', () => {
  it.each([
    ['20', '5.75', '1.15'],
    ['5.5', '6.54', '0.36'],
    ['7', '6.45', '0.45'],
  ])('6.90 at %s %% is %s net and %s VAT (worked example)', (rate, net, vat) => {
    const split = splitGross(D('6.90'), D(rate));
    expect([split.net.toFixed(2), split.vat.toFixed(2)]).toEqual([net, vat]);
  });

  // 20 % standard rate and 0 % as invented settings: rates are data with a day, not constants.
  it('hangs on the class of product and on the day', () => {
    const rates = [
      { productClass: 'filled_chocolate', fromDay: '2020-01-01', ratePercent: D('5.5') },
      { productClass: 'filled_chocolate', fromDay: '2026-07-01', ratePercent: D(6) },
      { productClass: 'bar', fromDay: '2020-01-01', ratePercent: D(20) },
    ];
    expect(good(vatRateOn(rates, 'filled_chocolate', '2026-06-30')).toString()).toBe('5.5');
    expect(good(vatRateOn(rates, 'filled_chocolate', '2026-07-01')).toString()).toBe('6');
    expect(good(vatRateOn(rates, 'bar', '2026-07-01')).toString()).toBe('20');
    const missing = vatRateOn(rates, 'bar', '2019-12-31');
    expect(missing.ok ? '' : missing.refusal.code).toBe('vat-rate-missing');
  });

  const cents = fc.integer({ min: 0, max: 10_000_000 });
  const rate = fc.integer({ min: 0, max: 3_000 });

  it('net and VAT are gross to the cent, both ways, and agree with big.js', () => {
    Big.DP = 30;
    fc.assert(
      fc.property(cents, rate, (c, r) => {
        const [amount, percent] = [D(c).dividedBy(100), D(r).dividedBy(100)];
        const apart = splitGross(amount, percent);
        expect(apart.net.plus(apart.vat).equals(amount)).toBe(true);
        const net = new Big(c).div(100).div(new Big(r).div(10_000).plus(1));
        expect(apart.net.toFixed(2)).toBe(net.round(2, 1).toFixed(2));
        const up = addVat(amount, percent);
        expect(up.net.plus(up.vat).equals(up.gross)).toBe(true);
        expect(up.vat.toFixed(2)).toBe(new Big(c).times(r).div(1_000_000).round(2, 1).toFixed(2));
      }),
    );
  });

  it('rounds per line or per invoice, and the lines carry the whole VAT either way', () => {
    const lines = Array.from({ length: 3 }, () => ({ gross: D('0.99'), ratePercent: D(20) }));
    const vat = (how: 'per_line' | 'per_invoice') => vatTotals(lines, how)[0]?.vat.toFixed(2);
    expect([vat('per_line'), vat('per_invoice')]).toEqual(['0.48', '0.49']);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(cents, fc.constantFrom(0, 550, 700, 2000)), {
          minLength: 1,
          maxLength: 12,
        }),
        (rows) => {
          const some = rows.map(([c, r]) => ({
            gross: D(c).dividedBy(100),
            ratePercent: D(r).dividedBy(100),
          }));
          for (const how of ['per_line', 'per_invoice'] as const) {
            const totals = vatTotals(some, how);
            expect(
              sum(totals.map(({ gross }) => gross)).equals(sum(some.map(({ gross }) => gross))),
            ).toBe(true);
            totals.forEach((total) => {
              expect(total.net.plus(total.vat).equals(total.gross)).toBe(true);
              expect(sum(total.lineVat).equals(total.vat)).toBe(true);
            });
          }
        },
      ),
    );
  });
});
