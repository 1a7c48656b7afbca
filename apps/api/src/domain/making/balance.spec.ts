import fc from 'fast-check';
import { Decimal, sum } from '../units';
import { settleBatch, type BatchSums, type CountedOutput } from '.';

const d = (text: string | number): Decimal => new Decimal(text);
const sums = (drawnG: string, lostG = '0', imbalanceReason: string | null = null): BatchSums => ({
  batchCode: 'B-261125-001A',
  drawnG: d(drawnG),
  drawnCost: d('10'),
  lostG: d(lostG),
  imbalanceReason,
});
const grams = (quantity: string): CountedOutput => ({
  itemName: 'Ganache',
  unit: 'g',
  quantity: d(quantity),
  weighedG: null,
  nominalMassG: null,
  lost: false,
});
const pieces = (count: number, more: Partial<CountedOutput> = {}): CountedOutput => ({
  itemName: 'Dome',
  unit: 'pc',
  quantity: d(count),
  weighedG: null,
  nominalMassG: null,
  lost: false,
  ...more,
});

describe('settleBatch', () => {
  it('names what is missing and where it may have gone', () => {
    const refused = settleBatch([grams('900')], sums('1000', '50'));
    expect(refused).toMatchObject({
      refusal: {
        code: 'batch-does-not-balance',
        facts: { drawnGrams: '1000', madeGrams: '900', lostGrams: '50', differenceGrams: '50' },
      },
    });
  });

  it('refuses more out than in without a reason', () => {
    expect(settleBatch([grams('1000.001')], sums('1000'))).toMatchObject({
      refusal: { code: 'more-out-than-in', facts: { differenceGrams: '-0.001' } },
    });
    expect(settleBatch([grams('1000.001')], sums('1000', '0', 'scale'))).toMatchObject({
      ok: true,
    });
  });

  it('weighs counted pieces by the balance, rejects like the good ones', () => {
    const settled = settleBatch([pieces(22), pieces(2, { lost: true })], sums('264'));
    if (!settled.ok) throw new Error(settled.refusal.detail);
    expect(settled.value.map(({ massG }) => massG.toFixed())).toEqual(['242', '22']);
    expect(settled.value.map(({ cost }) => cost.toFixed())).toEqual(['10', '0']);
  });

  it('asks for a weight when several kinds came out and nothing says what one weighs', () => {
    const two = [pieces(10, { nominalMassG: d(11) }), pieces(10, { itemName: 'Bar' })];
    expect(settleBatch(two, sums('300'))).toMatchObject({
      refusal: { code: 'output-not-weighed', facts: { item: 'Bar' } },
    });
  });

  it('refuses a batch from which nothing good came', () => {
    const rejects = [pieces(24, { lost: true })];
    expect(settleBatch(rejects, sums('264'))).toMatchObject({ refusal: { code: 'nothing-made' } });
  });

  it('loses neither a milligram nor a ten-thousandth, whatever is counted', () => {
    const counts = fc.array(fc.tuple(fc.integer({ min: 1, max: 500 }), fc.boolean()), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(
        counts,
        fc.integer({ min: 1, max: 10 ** 8 }),
        fc.nat(10 ** 8),
        (made, mg, cost) => {
          const outputs = made.map(([count, lost], index) =>
            pieces(count, { lost: lost && index > 0 }),
          );
          const drawn = { ...sums('0'), drawnG: d(mg).div(1000), drawnCost: d(cost).div(10000) };
          const settled = settleBatch(outputs, drawn);
          if (!settled.ok) throw new Error(settled.refusal.detail);
          const massG = sum(settled.value.map((output) => output.massG));
          const paid = sum(settled.value.map((output) => output.cost));
          expect(massG.equals(drawn.drawnG) && paid.equals(drawn.drawnCost)).toBe(true);
        },
      ),
    );
  });
});
