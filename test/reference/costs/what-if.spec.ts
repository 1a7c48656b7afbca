import { designedCost, totalCost, waterfall, type CostBasis } from '@api/domain/costing';
import { compareScenarios, type Change, type SoldItem } from '@api/domain/what-if';
import { Decimal, sum } from '@api/domain/units';
import fc from 'fast-check';
import { BASIS, DAY, costOf, good } from './workshop-example';

const D = (value: number | string): Decimal => new Decimal(value);
const VAT = [{ productClass: 'box', fromDay: '2020-01-01', ratePercent: D(20) }];
const SOLD: SoldItem[] = [{ item: 'box', vatClass: 'box', list: 'counter', price: D('16.20') }];
const run = (...scenarios: { name: string; changes: Change[] }[]) =>
  good(compareScenarios({ costs: BASIS, vat: VAT }, SOLD, scenarios));
const box = (changes: Change[]) => run({ name: 's', changes })[1]?.outcomes[0];

// Worked examples of our own on the box of twelve.
describe('what if', () => {
  it('couverture up by a third: the chocolate of a box costs a third more and nothing else moves', () => {
    const third = D(100).dividedBy(3);
    const chocolate = D('14.7').plus('24.3262656').dividedBy(606).times(12);
    const after = box([{ kind: 'ingredient', items: ['dark'], percent: third }]);
    expect(after?.cost.minus(totalCost(costOf('box'))).toFixed(10)).toBe(
      chocolate.dividedBy(3).toFixed(10),
    );
  });

  it('several at once add up, and leave the basis as it was', () => {
    const before = JSON.stringify([...BASIS.prices, BASIS.rates]);
    const both = box([
      { kind: 'wage', percent: D(10) },
      { kind: 'ingredient_price', item: 'carton', amount: D('2.23') },
    ]);
    expect(both?.cost.minus(totalCost(costOf('box'))).toFixed(6)).toBe(
      D('0.326733').plus(1).toFixed(6),
    );
    expect(JSON.stringify([...BASIS.prices, BASIS.rates])).toBe(before);
  });

  it('more loss in casting makes each good piece dearer: 5 points are ÷ 0.95', () => {
    const after = box([{ kind: 'loss', items: ['piece'], points: D(5) }]);
    const inside = totalCost(costOf('piece')).times(12);
    expect(after?.cost.toFixed(8)).toBe(inside.dividedBy('0.95').plus('1.23').toFixed(8));
  });

  it('VAT changes what is left of the same price and not what it costs', () => {
    const [unchanged, changed] = run({
      name: 'vat',
      changes: [{ kind: 'vat', productClass: 'box', ratePercent: D('5.5') }],
    });
    expect(unchanged?.outcomes[0]?.marginPercent?.toFixed(2)).toBe('59.90');
    expect(changed?.outcomes[0]?.net?.toFixed(2)).toBe('15.36');
    expect(changed?.outcomes[0]?.cost.equals(unchanged?.outcomes[0]?.cost ?? 0)).toBe(true);
  });

  it('refuses a loss of everything', () => {
    const all = compareScenarios({ costs: BASIS, vat: VAT }, SOLD, [
      { name: 'x', changes: [{ kind: 'loss', points: D(100) }] },
    ]);
    expect(all.ok ? '' : all.refusal.code).toBe('no-good-output');
  });
});

describe('money properties of a designed cost', () => {
  const items = ['cream', 'dark', 'syrup', 'invert', 'sorbitol', 'butter', 'carton'];
  const priced = (cents: number[]): CostBasis => ({
    ...BASIS,
    prices: new Map(
      items.map((item, i) => [
        item,
        {
          amount: D(cents[i] ?? 0).dividedBy(100),
          per: item === 'carton' ? ('pc' as const) : ('kg' as const),
        },
      ]),
    ),
  });
  const anyPrices = fc.array(fc.integer({ min: 0, max: 100_000 }), { minLength: 7, maxLength: 7 });

  it('the parts of a waterfall sum to the whole in cents', () => {
    fc.assert(
      fc.property(anyPrices, (cents) => {
        const entries = costOf('box', priced(cents));
        const { steps, total } = waterfall(entries);
        expect(sum(steps.map(({ amount }) => amount)).equals(total)).toBe(true);
        expect(total.toFixed(2)).toBe(totalCost(entries).toFixed(2));
        steps.forEach(({ amount, category, part }) => {
          const exact = totalCost(
            entries.filter((e) => e.category === category && e.part === part),
          );
          // One cent of the largest remainder, and the half cent that the whole was rounded by.
          expect(amount.minus(exact).abs().lessThan('0.015')).toBe(true);
        });
      }),
    );
  });

  it('a dearer price never makes a product cheaper, and a used one makes it dearer', () => {
    fc.assert(
      fc.property(
        anyPrices,
        fc.integer({ min: 0, max: 6 }),
        fc.integer({ min: 1, max: 1_000 }),
        (cents, at, more) => {
          const dearer = cents.map((value, index) => (index === at ? value + more : value));
          const [low, high] = [costOf('box', priced(cents)), costOf('box', priced(dearer))];
          expect(totalCost(high).greaterThan(totalCost(low))).toBe(true);
        },
      ),
    );
  });

  it('is the same whether a box is costed by itself or among many', () => {
    expect(good(designedCost('box', { ...BASIS, day: DAY })).length).toBe(costOf('box').length);
  });
});
