// Far more is asked than fits: the answer is cut short at a limit, and is as sound as any other.
import { Effort, plan, waysOut, type Plan, type PlanProblem } from '@api/domain/planning';
import { atOnce } from '@api/domain/steps';
import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { faultsOf } from './audit-plan';
import { D, TODAY, cast, cooked, demand, packed, workshop } from './small-workshop';

const HORIZON_DAYS = 30;
const dayAt = (offset: number): string =>
  Temporal.PlainDate.from(TODAY).add({ days: offset }).toString();

const items = [
  cooked('ganache', { lifeDays: 14 }),
  cooked('praline', { lifeDays: 40, restDays: 1 }),
  cast('piece-a', 'ganache', { lifeDays: 30, minutesPerTray: 20, goodRatio: '0.95' }),
  cast('piece-b', 'praline', { lifeDays: 40, minutesPerTray: 20, design: 'cube' }),
  packed('small', { 'piece-a': 2, 'piece-b': 2, carton: 1 }),
  packed('large', { 'piece-a': 8, 'piece-b': 4, carton: 1 }),
];

/** Forty orders and more of up to thousands of boxes, and a workshop that packs a few dozen a day. */
const flood = fc.record({
  orders: fc.array(
    fc.record({
      boxes: fc.integer({ min: 20, max: 5000 }),
      box: fc.constantFrom('small', 'large', 'piece-a'),
      dueOffset: fc.integer({ min: -2, max: HORIZON_DAYS + 5 }),
      life: fc.integer({ min: 0, max: 20 }),
      value: fc.integer({ min: 0, max: 50 }),
    }),
    { minLength: 40, maxLength: 120 },
  ),
  inStock: fc.integer({ min: 0, max: 300 }),
  moulds: fc.record({ dome: fc.integer({ min: 0, max: 6 }), cube: fc.integer({ min: 0, max: 6 }) }),
  minutes: fc.constantFrom(0, 60, 240, 480),
  looks: fc.integer({ min: 0, max: 4000 }),
});
type Flood = typeof flood extends fc.Arbitrary<infer T> ? T : never;

const problemOf = ({ orders, inStock, moulds, minutes }: Omit<Flood, 'looks'>): PlanProblem =>
  workshop(items, {
    horizonDays: HORIZON_DAYS,
    moulds: new Map(Object.entries(moulds)),
    capacities: [{ resource: 'people', minutesPerDay: minutes }],
    lots: [{ lot: 'shelf', item: 'small', quantity: D(inStock), lastDay: dayAt(60), held: false }],
    demands: orders.map(({ box, boxes, dueOffset, life, value }, index) =>
      demand(`o${index}`, box, boxes, dayAt(dueOffset), {
        minLifeDays: life,
        valuePerUnit: D(value),
      }),
    ),
    begun: [
      {
        batch: 'begun',
        item: 'ganache',
        quantity: D(500),
        readyDay: TODAY,
        lastDay: dayAt(14),
        busy: [{ resource: 'people', day: TODAY, minutes: Math.min(30, minutes) }],
      },
    ],
  });

const planned = (problem: PlanProblem, looks?: Effort): Plan => {
  const usual = { rounds: 8, searchTries: 0 };
  const result = plan(problem, looks === undefined ? usual : { ...usual, looks });
  if (!result.ok) throw new Error(result.refusal.detail);
  return result.value;
};
const isCut = ({ shortfalls }: Plan): boolean =>
  shortfalls.some(({ because }) => because.some(({ kind }) => kind === 'not_tried'));
const servedFromStock = ({ served }: Plan): number =>
  served
    .flatMap(({ uses }) => uses)
    .filter(({ source }) => source.kind === 'lot')
    .reduce((total, { quantity }) => total + quantity.toNumber(), 0);

describe('a plan far over capacity', () => {
  it('overbooks nothing, keeps order and rests, and adds up, wherever it is cut short', () => {
    let cut = 0;
    fc.assert(
      fc.property(flood, ({ looks, ...asked }) => {
        const problem = problemOf(asked);
        const effort = new Effort(looks);
        const answer = planned(problem, effort);
        expect(faultsOf(problem, answer)).toEqual([]);
        expect(answer.shortfalls.length).toBeGreaterThan(0);
        // It says that it stopped exactly when it ran out of looks on the way to the answer.
        if (isCut(answer)) {
          cut += 1;
          expect(effort.left).toBe(0);
        }
        expect(planned(problem, new Effort(looks))).toEqual(answer);
      }),
      { numRuns: 120 },
    );
    expect(cut).toBeGreaterThan(20);
  });

  it('is sound within its usual limit, and each demand that goes short says why', () => {
    fc.assert(
      fc.property(flood, (asked) => {
        const problem = problemOf(asked);
        const answer = planned(problem);
        expect(faultsOf(problem, answer)).toEqual([]);
        for (const { demand: id, because } of answer.shortfalls) {
          const due = problem.demands.find((one) => one.id === id)?.dueDay ?? '';
          // Of a day that has passed there is nothing to try.
          expect(because.length > 0 || due < TODAY).toBe(true);
        }
      }),
      { numRuns: 25 },
    );
  });

  const hopeless = (): PlanProblem =>
    problemOf({
      orders: Array.from({ length: 60 }, (_, index) => ({
        ...{ boxes: 2000, box: 'small' as const, life: 5, value: 10 },
        dueOffset: 3 + (index % 25),
      })),
      inStock: 250,
      moulds: { dome: 2, cube: 2 },
      minutes: 480,
    });

  it('gives what is in stock even without a look, makes nothing, and says that it did not try', () => {
    const answer = planned(hopeless(), new Effort(0));
    expect(answer.batches).toEqual([]);
    expect(servedFromStock(answer)).toBe(250);
    expect(answer.shortfalls).toHaveLength(60);
    expect(answer.shortfalls[0]?.because).toEqual([{ kind: 'not_tried', subject: 'small' }]);
  });

  it('takes no more looks than a plan may, however much is asked', () => {
    const many = hopeless();
    const demands = Array.from({ length: 40 }, (_, copy) =>
      many.demands.map((one) => ({ ...one, id: `${one.id}-${copy}` })),
    ).flat();
    const effort = new Effort();
    const problem = { ...many, demands };
    expect(faultsOf(problem, planned(problem, effort))).toEqual([]);
    // A last need is placed without a further look when none is left: one for each demand at most.
    expect(effort.taken).toBeLessThanOrEqual(Effort.USUAL_LOOKS + 2 * demands.length);
  });

  it('tries its ways out within the same limit, and names those that it tried', () => {
    const problem = hopeless();
    const effort = new Effort(20_000);
    const ways = atOnce(
      waysOut(
        problem,
        planned(problem),
        {
          mouldPrice: new Map([...problem.moulds.keys()].map((design) => [design, D(15)])),
          minutePrice: new Map([['people', D('0.5')]]),
        },
        effort,
      ),
    );
    if (!ways.ok) throw new Error(ways.refusal.detail);
    expect(ways.value.map(({ kind }) => kind)).toContain('send_fewer');
    expect(effort.taken).toBeLessThanOrEqual(20_000 + 2 * problem.demands.length);
  });
});
