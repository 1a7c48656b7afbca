import { plan, type Demand, type PlanItem, type PlanProblem } from '@api/domain/planning';
import fc from 'fast-check';
import { faultsOf } from './audit-plan';
import { D, TODAY, cast, cooked, demand, packed, workshop } from './small-workshop';
import { Temporal } from 'temporal-polyfill';

const dayAt = (offset: number): string =>
  Temporal.PlainDate.from(TODAY).add({ days: offset }).toString();

interface SmallOrder {
  /** Whole trays of a piece of its own, so that nothing is left over to share. */
  readonly trays: number;
  readonly dueOffset: number;
  readonly design: 'dome' | 'cube';
  readonly minutesPerTray: number;
  /** The filling must be cooked this day or at most so many days before. */
  readonly fillingLife: number;
  readonly pieceLife: number;
}
interface SmallCase {
  readonly orders: readonly SmallOrder[];
  readonly minutes: readonly number[];
  readonly moulds: { readonly dome: number; readonly cube: number };
  readonly closed: readonly number[];
}

const COOK_MINUTES = 30;
const DAYS = 5;

const smallCase: fc.Arbitrary<SmallCase> = fc.record({
  orders: fc.array(
    fc.record({
      trays: fc.integer({ min: 1, max: 3 }),
      dueOffset: fc.integer({ min: 1, max: DAYS - 1 }),
      design: fc.constantFrom('dome' as const, 'cube' as const),
      minutesPerTray: fc.constantFrom(20, 30, 50),
      fillingLife: fc.integer({ min: 1, max: 3 }),
      pieceLife: fc.integer({ min: 1, max: 4 }),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  minutes: fc.array(fc.constantFrom(0, 60, 90, 130), { minLength: DAYS, maxLength: DAYS }),
  moulds: fc.record({ dome: fc.integer({ min: 1, max: 3 }), cube: fc.integer({ min: 0, max: 2 }) }),
  closed: fc.subarray([1, 2, 3], { maxLength: 1 }),
});

const problemOf = ({ orders, minutes, moulds, closed }: SmallCase): PlanProblem => {
  const items = orders.flatMap((order, index): PlanItem[] => [
    cooked(`f${index}`, { minutesFixed: COOK_MINUTES, lifeDays: order.fillingLife }),
    cast(
      `p${index}`,
      `f${index}`,
      order.design === 'dome'
        ? { design: 'dome', minutesPerTray: order.minutesPerTray, lifeDays: order.pieceLife }
        : { design: 'cube', minutesPerTray: order.minutesPerTray, lifeDays: order.pieceLife },
    ),
  ]);
  return workshop(items, {
    horizonDays: DAYS,
    calendar: { closedWeekdays: [], closedDays: closed.map(dayAt), openDays: [] },
    capacities: [
      {
        resource: 'people',
        minutesPerDay: 0,
        exceptions: new Map(minutes.map((m, day) => [dayAt(day), m])),
      },
    ],
    moulds: new Map(Object.entries(moulds)),
    demands: orders.map((order, index): Demand =>
      demand(`o${index}`, `p${index}`, order.trays * 24, dayAt(order.dueOffset)),
    ),
  });
};

/** Every way to spread `trays` over the days from `first` to `last`. */
const spreads = (trays: number, first: number, last: number): number[][] => {
  if (first > last) return trays === 0 ? [[]] : [];
  const ways: number[][] = [];
  for (let count = 0; count <= trays; count += 1) {
    for (const rest of spreads(trays - count, first + 1, last)) ways.push([count, ...rest]);
  }
  return ways;
};

/**
 * Brute force: every spread of every order's trays over the days, and for each day of casting every
 * day on which its filling could be cooked. Knows nothing of the planner.
 */
const someWayExists = ({ orders, minutes, moulds, closed }: SmallCase): boolean => {
  const free = minutes.map((value, day) => (closed.includes(day) ? 0 : value));
  const domes = free.map(() => moulds.dome);
  const cubes = free.map(() => moulds.cube);

  const cookFor = (
    casts: readonly number[],
    at: number,
    cooked: ReadonlySet<number>,
    order: number,
  ): boolean => {
    const day = casts[at];
    if (day === undefined) return placeOrder(order + 1);
    const { fillingLife, dueOffset } = orders[order] ?? { fillingLife: 0, dueOffset: 0 };
    // The filling caps the piece's date, so it has to last until the piece is due.
    for (let cook = day; cook >= 0 && cook + fillingLife >= dueOffset; cook -= 1) {
      if (closed.includes(cook)) continue;
      if (cooked.has(cook)) {
        if (cookFor(casts, at + 1, cooked, order)) return true;
        continue;
      }
      if ((free[cook] ?? 0) < COOK_MINUTES) continue;
      free[cook] = (free[cook] ?? 0) - COOK_MINUTES;
      const found = cookFor(casts, at + 1, new Set([...cooked, cook]), order);
      free[cook] = (free[cook] ?? 0) + COOK_MINUTES;
      if (found) return true;
    }
    return false;
  };

  const placeOrder = (index: number): boolean => {
    const order = orders[index];
    if (!order) return true;
    const trays = order.design === 'dome' ? domes : cubes;
    const first = Math.max(0, order.dueOffset - order.pieceLife);
    for (const spread of spreads(order.trays, first, order.dueOffset - 1)) {
      const take = (sign: 1 | -1): void =>
        spread.forEach((count, offset) => {
          free[first + offset] = (free[first + offset] ?? 0) - sign * count * order.minutesPerTray;
          trays[first + offset] = (trays[first + offset] ?? 0) - sign * count;
        });
      take(1);
      const casts = spread.flatMap((count, offset) => (count > 0 ? [first + offset] : []));
      const fits =
        casts.every((day) => !closed.includes(day)) &&
        free.every((value) => value >= 0) &&
        trays.every((value) => value >= 0);
      const found = fits && cookFor(casts, 0, new Set(), index);
      take(-1);
      if (found) return true;
    }
    return false;
  };
  return placeOrder(0);
};

describe('a plan is found when there is one', () => {
  it('meets every order of a small week exactly when trying everything does', () => {
    let possible = 0;
    fc.assert(
      fc.property(smallCase, (small) => {
        const problem = problemOf(small);
        const result = plan(problem);
        if (!result.ok) throw new Error(result.refusal.detail);
        expect(faultsOf(problem, result.value)).toEqual([]);
        const met = result.value.shortfalls.length === 0;
        expect(met).toBe(someWayExists(small));
        if (met) possible += 1;
      }),
      { numRuns: 400 },
    );
    expect(possible).toBeGreaterThan(40);
  });
});

describe('a plan of any small shop is sound', () => {
  const anyShop = fc.record({
    orders: fc.array(
      fc.record({
        boxes: fc.integer({ min: 1, max: 20 }),
        box: fc.constantFrom('small', 'large', 'loose'),
        dueOffset: fc.integer({ min: 0, max: 20 }),
        life: fc.integer({ min: 0, max: 30 }),
        value: fc.integer({ min: 0, max: 50 }),
      }),
      { minLength: 1, maxLength: 12 },
    ),
    lots: fc.array(
      fc.record({
        item: fc.constantFrom('piece-a', 'piece-b', 'ganache', 'small'),
        quantity: fc.integer({ min: 1, max: 200 }),
        lastOffset: fc.integer({ min: -3, max: 40 }),
        held: fc.boolean(),
      }),
      { maxLength: 8 },
    ),
    moulds: fc.integer({ min: 0, max: 5 }),
    minutes: fc.constantFrom(0, 100, 240, 480),
  });
  const items = [
    cooked('ganache', { lifeDays: 14 }),
    cooked('praline', { lifeDays: 40, restDays: 1 }),
    cast('piece-a', 'ganache', { lifeDays: 30, minutesPerTray: 20, goodRatio: '0.95' }),
    cast('piece-b', 'praline', { lifeDays: 40, minutesPerTray: 20 }),
    packed('small', { 'piece-a': 2, 'piece-b': 2, carton: 1 }),
    packed('large', { 'piece-a': 8, 'piece-b': 4, carton: 1 }),
  ];

  it('no held or short lot, no mould or minute too many, nothing used twice or before it is ready', () => {
    fc.assert(
      fc.property(anyShop, ({ orders, lots, moulds, minutes }) => {
        const problem = workshop(items, {
          horizonDays: 25,
          moulds: new Map([['dome', moulds]]),
          capacities: [{ resource: 'people', minutesPerDay: minutes }],
          lots: lots.map(({ lastOffset, ...lot }, index) => ({
            ...lot,
            lot: `l${index}`,
            quantity: D(lot.quantity),
            lastDay: dayAt(lastOffset),
          })),
          demands: orders.map((order, index) =>
            demand(
              `o${index}`,
              order.box === 'loose' ? 'piece-a' : order.box,
              order.boxes,
              dayAt(order.dueOffset),
              {
                minLifeDays: order.life,
                valuePerUnit: D(order.value),
              },
            ),
          ),
        });
        const result = plan(problem, { rounds: 3, searchTries: 500 });
        if (!result.ok) throw new Error(result.refusal.detail);
        expect(faultsOf(problem, result.value)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });
});
