import { cook, infusionPlan, makeUpOf, totalG, type PotStep } from '@api/domain/composition';
import { compositionOf } from '@api/domain/reference-ingredients';
import { Decimal } from '@api/domain/units';

const d = (value: number): Decimal => new Decimal(value);
const CREAM = compositionOf({ water: 58.9, milkFat: 35, lactose: 3.2, protein: 2.3, ash: 0.6 });
const WATER = compositionOf({ water: 100 });
const add = (composition: typeof CREAM, massG: number): PotStep => ({
  kind: 'add',
  content: makeUpOf(composition, d(massG)),
  infusion: false,
});
const TEA: PotStep = { kind: 'add', content: makeUpOf(null, d(40)), infusion: true };
const STRAINED: PotStep[] = [
  add(CREAM, 1000),
  TEA,
  { kind: 'steam', massG: d(28) },
  { kind: 'strain', heldBackG: d(88) },
];

/** Worked by hand: 1000 g of cream, 28 g of steam, 40 g of tea that keeps 2.2 g per g. */
describe('an infusion weighed three times', () => {
  it.each([
    ['strained', STRAINED, [510.21, 318.313, 29.103, 20.918, 5.457, 884]],
    [
      'topped up with cream',
      [...STRAINED, add(CREAM, 116)],
      [578.534, 358.913, 32.815, 23.586, 6.153, 1000],
    ],
    [
      'topped up with water',
      [...STRAINED, add(WATER, 116)],
      [626.21, 318.313, 29.103, 20.918, 5.457, 1000],
    ],
  ])('%s', (_, steps, [water, fat, lactose, protein, ash, total]) => {
    const pot = cook(steps);
    if (!pot.ok) throw new Error(pot.refusal.detail);
    const { parts } = pot.value.content;
    const figures = [parts.water, parts.milkFat, parts.lactose, parts.protein, parts.ash];
    expect(figures.map((figure) => figure.toFixed(3))).toEqual(
      [water, fat, lactose, protein, ash].map((figure) => (figure ?? 0).toFixed(3)),
    );
    expect(totalG(pot.value.content).toFixed(3)).toBe((total ?? 0).toFixed(3));
    expect(pot.value.strainedOutG.toNumber()).toBe(40);
    expect(pot.value.heldBackG.toNumber()).toBe(88);
  });

  it('throws away 90.53 g of the first cream and asks for 116 g more', () => {
    const plan = infusionPlan(d(1000), d(28), d(40), d(2.2));
    expect(plan.heldBackG.toNumber()).toBe(88);
    expect(plan.topUpG.toNumber()).toBe(116);
    expect(plan.discardedLiquidG.toFixed(2)).toBe('90.53');
    expect(plan.retentionRatio.toNumber()).toBe(2.2);
  });

  it('un-pressed spent tea of 80–85 % water keeps 4.0–5.7 g per g (tea-spent dewatering note)', () => {
    expect(80 / 20).toBeCloseTo(4, 5);
    const plan = infusionPlan(d(1000), d(0), d(40), d(4));
    expect(plan.topUpG.toNumber()).toBe(160);
  });
});
