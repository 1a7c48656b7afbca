import {
  madeCosts,
  totalCost,
  unitCostOf,
  type MadeBatch,
  type MadeFacts,
} from '@api/domain/costing';
import { Decimal, sum } from '@api/domain/units';
import fc from 'fast-check';
import { good } from './workshop-example';

const D = (value: number | string): Decimal => new Decimal(value);
const RATES = [{ role: 'maker', fromDay: '2026-01-01', ratePerHour: D(22) }];

const FACTS: MadeFacts = {
  received: [
    { lot: 'cream-1', item: 'cream', quantity: D(2000), price: D('8.40') },
    { lot: 'dark-1', item: 'dark', quantity: D(10000), price: D('98.00') },
    { lot: 'carton-1', item: 'carton', quantity: D(100), price: D('123.00') },
  ],
  rates: RATES,
  overhead: { kind: 'per_hour', ratePerHour: D(0) },
  batches: [
    {
      id: 'cook',
      day: '2026-11-02',
      makesPieces: false,
      draws: [
        { lot: 'cream-1', role: 'base', quantity: D(1000) },
        { lot: 'dark-1', role: 'base', quantity: D(2000) },
        { lot: 'dark-1', role: 'base', quantity: D(-500) },
      ],
      losses: [{ kind: 'steam', massG: D(100) }],
      outputs: [{ lot: 'ganache-1', quantity: D(2400), massG: D(2400), role: 'product' }],
      labour: [{ role: 'maker', minutes: D(60) }],
    },
    {
      id: 'cast',
      day: '2026-11-03',
      makesPieces: true,
      draws: [
        { lot: 'ganache-1', role: 'filling', quantity: D(1200) },
        { lot: 'dark-1', role: 'shell', quantity: D(1300) },
      ],
      losses: [{ kind: 'rejects', massG: D(100) }],
      outputs: [
        { lot: 'piece-1', quantity: D(240), massG: D(2160), role: 'product' },
        { lot: 'trim-1', quantity: D(240), massG: D(240), role: 'rework' },
      ],
      labour: [{ role: 'maker', minutes: D(90) }],
    },
    {
      id: 'pack',
      day: '2026-11-04',
      makesPieces: false,
      draws: [
        { lot: 'piece-1', role: 'slot', quantity: D(240) },
        { lot: 'carton-1', role: 'packaging', quantity: D(20) },
      ],
      losses: [],
      outputs: [{ lot: 'box-1', quantity: D(20), massG: D(2160), role: 'product' }],
      labour: [{ role: 'maker', minutes: D(30) }],
    },
  ],
};

// Worked example of our own, by hand: ganache 4.20 + 14.70 + 22.00 = 40.90; half of it, 12.74 of
// shell and 33.00 of work go into the cast; of its 22.19 of goods a tenth leaves as trim.
describe('cost as made, worked example', () => {
  const lots = good(madeCosts(FACTS));
  const total = (lot: string): string => totalCost(lots.get(lot)?.entries ?? []).toFixed(4);

  it('costs the ganache from its lots, with a correction taken back out', () => {
    expect(total('ganache-1')).toBe('40.9000');
  });

  it('lets rework take the material by weight and leaves the work with the good pieces', () => {
    // 12.74 + 9.45 material, of which 240 g of 2500 g is trim and 100 g rejects; 11.00 + 33.00 work.
    const goods = D('12.74').plus('9.45').plus(11);
    expect(total('trim-1')).toBe(goods.times(240).dividedBy(2400).toFixed(4));
    expect(total('piece-1')).toBe(goods.times(2160).dividedBy(2400).plus(33).toFixed(4));
  });

  it('shows the rejects as loss and charges them to what came out', () => {
    const entries = lots.get('piece-1')?.entries ?? [];
    const loss = totalCost(entries.filter(({ category }) => category === 'loss'));
    const material = totalCost(entries.filter(({ category }) => category === 'material'));
    expect(loss.dividedBy(loss.plus(material)).toFixed(6)).toBe('0.040000');
  });

  it('divides by the boxes that were made', () => {
    const box = lots.get('box-1');
    expect(box && totalCost(unitCostOf(box)).times(20).toFixed(4)).toBe(
      totalCost(lots.get('piece-1')?.entries ?? [])
        .plus('24.60')
        .plus(11)
        .toFixed(4),
    );
  });

  it('refuses a lot whose cost nobody knows', () => {
    const cost = madeCosts({ ...FACTS, received: FACTS.received.slice(1) });
    expect(cost.ok ? '' : cost.refusal.code).toBe('lot-cost-unknown');
  });
});

describe('cost as made, any history', () => {
  /** Each batch draws parts of the last three lots and may return trim; nothing else is left. */
  const history = fc.array(
    fc.record({
      parts: fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 1, maxLength: 3 }),
      trim: fc.integer({ min: 0, max: 30 }),
      lost: fc.integer({ min: 0, max: 30 }),
      minutes: fc.integer({ min: 0, max: 300 }),
    }),
    { minLength: 1, maxLength: 8 },
  );

  it('spends exactly what was paid: bought and worked equals what all lots hold at the end', () => {
    fc.assert(
      fc.property(history, fc.integer({ min: 1, max: 99_999 }), (steps, cents) => {
        const price = D(cents).dividedBy(100);
        const left = new Map<string, Decimal>([['bought', D(100_000)]]);
        const made = new Map<string, Decimal>([['bought', D(100_000)]]);
        const batches = steps.map((step, index): MadeBatch => {
          const sources = [...left.keys()].slice(-3);
          const draws = step.parts.flatMap((part, at) => {
            const lot = sources[at];
            if (lot === undefined) return [];
            const quantity = (left.get(lot) ?? D(0)).times(part).dividedBy(101);
            left.set(lot, (left.get(lot) ?? D(0)).minus(quantity));
            return [{ lot, role: 'base', quantity }];
          });
          const outputs = [
            {
              lot: `p${index}`,
              quantity: D(100 - step.trim),
              massG: D(100 - step.trim),
              role: 'product' as const,
            },
            ...(step.trim > 0
              ? [
                  {
                    lot: `t${index}`,
                    quantity: D(step.trim),
                    massG: D(step.trim),
                    role: 'rework' as const,
                  },
                ]
              : []),
          ];
          outputs.forEach(({ lot, quantity }) => {
            left.set(lot, quantity);
            made.set(lot, quantity);
          });
          return {
            id: String(index),
            day: '2026-11-02',
            makesPieces: true,
            draws,
            losses: [{ kind: 'scrapings', massG: D(step.lost) }],
            outputs,
            labour: [{ role: 'maker', minutes: D(step.minutes) }],
          };
        });
        const costs = good(
          madeCosts({
            received: [{ lot: 'bought', item: 'a', quantity: D(100_000), price }],
            batches,
            rates: RATES,
            overhead: { kind: 'percent', percent: D(0) },
          }),
        );
        const held = sum(
          [...left].map(([lot, quantity]) =>
            totalCost(costs.get(lot)?.entries ?? [])
              .times(quantity)
              .dividedBy(made.get(lot) ?? 1),
          ),
        );
        const worked = D(22)
          .times(steps.reduce((all, { minutes }) => all + minutes, 0))
          .dividedBy(60);
        expect(held.toFixed(20)).toBe(price.plus(worked).toFixed(20));
      }),
    );
  });
});
