// A holiday season: 60 orders over 30 working days, 40 pieces with 20 fillings, 12 boxes.
import { plan, type Demand, type PlanItem, type PlanProblem } from '@api/domain/planning';
import { Decimal } from '@api/domain/units';
import { Temporal } from 'temporal-polyfill';
import { clocked, median, report } from './stopwatch';

const PIECES = 40;
const FILLINGS = 20;
const BOXES = 12;
const ORDERS = 60;
const HORIZON_DAYS = 42;
const TODAY = '2026-11-02';

const D = (value: number): Decimal => new Decimal(value);
const bought = (id: string): PlanItem => ({ id, capsDate: true, leadDays: 2 });

const filling = (index: number): PlanItem => ({
  id: `filling-${index}`,
  capsDate: true,
  leadDays: 0,
  recipe: {
    step: 'cook',
    lines: Array.from({ length: 6 }, (_, line) => ({
      component: `ingredient-${(index * 3 + line) % 30}`,
      quantityPerUnit: D(0.2),
    })),
    goodRatio: D(0.98),
    uses: [{ resource: 'people', minutesFixed: 20, minutesPerUnit: 0.005 }],
    restDays: index % 2,
    lifeDays: 21 + index,
  },
});

const piece = (index: number): PlanItem => ({
  id: `piece-${index}`,
  capsDate: true,
  leadDays: 0,
  recipe: {
    step: 'cast',
    lines: [
      { component: `filling-${index % FILLINGS}`, quantityPerUnit: D(5) },
      { component: 'couverture', quantityPerUnit: D(4) },
    ],
    goodRatio: D(0.97),
    tray: { design: `design-${index % 8}`, cavities: 24, occupiedDays: 1 },
    uses: [
      { resource: 'people', minutesFixed: 5, minutesPerUnit: 0.25 },
      { resource: 'tank', minutesFixed: 0, minutesPerUnit: 0.1 },
    ],
    restDays: 1,
    lifeDays: 40,
  },
});

const box = (index: number): PlanItem => ({
  id: `box-${index}`,
  capsDate: true,
  leadDays: 0,
  recipe: {
    step: 'pack',
    lines: [
      ...Array.from({ length: 12 }, (_, slot) => ({
        component: `piece-${(index * 5 + slot * 3) % PIECES}`,
        quantityPerUnit: D(1),
      })),
      { component: 'carton', quantityPerUnit: D(1) },
    ],
    goodRatio: D(1),
    uses: [{ resource: 'people', minutesFixed: 0, minutesPerUnit: 1.5 }],
    restDays: 0,
  },
});

/** `people`: how many hold the season; few make it short, which is the slow case. */
const season = (people: number, orders = ORDERS, days = HORIZON_DAYS): PlanProblem => {
  const many = <T>(length: number, make: (index: number) => T): T[] =>
    Array.from({ length }, (_, index) => make(index));
  const items = [
    ...many(30, (index) => bought(`ingredient-${index}`)),
    bought('couverture'),
    bought('carton'),
    ...many(FILLINGS, filling),
    ...many(PIECES, piece),
    ...many(BOXES, box),
  ];
  const first = Temporal.PlainDate.from(TODAY);
  const demands = many(orders, (index): Demand => ({
    id: `order-${index}`,
    item: `box-${index % BOXES}`,
    quantity: D(10 + ((index * 7) % 40)),
    dueDay: first.add({ days: 5 + ((index * 11) % (days - 6)) }).toString(),
    minLifeDays: 10,
    valuePerUnit: D(15),
  }));
  return {
    today: TODAY,
    horizonDays: days,
    calendar: { closedWeekdays: [6, 7], closedDays: [], openDays: [] },
    items: new Map(items.map((item) => [item.id, item])),
    lots: [],
    demands,
    capacities: [
      { resource: 'people', minutesPerDay: 480 * people },
      { resource: 'tank', minutesPerDay: 420 },
    ],
    moulds: new Map(many(8, (index) => [`design-${index}`, 8])),
    begun: [],
  };
};

const AIM_MS = 2000;

it.each([
  [6, ORDERS, HORIZON_DAYS],
  [3, ORDERS, HORIZON_DAYS],
  [1, ORDERS, HORIZON_DAYS],
  // Far over capacity: hardly one order in a hundred fits.
  [0.2, 400, 90],
])('plans a holiday season for %d people: %i orders in %i days', async (people, orders, days) => {
  const problem = season(people, orders, days);
  const times: number[] = [];
  let said = '';
  for (let round = 0; round < 3; round += 1) {
    times.push(
      await clocked(() => {
        const result = plan(problem);
        if (!result.ok) throw new Error(result.refusal.detail);
        const { batches, shortfalls } = result.value;
        said = `${String(batches.length)} batches, ${String(shortfalls.length)} orders short`;
        return Promise.resolve();
      }),
    );
  }
  report(
    `plan of a season, ${String(people)} people, ${String(orders)} orders: ${median(times).toFixed(0)} ms, ${said} ` +
      `(aim under ${String(AIM_MS)} ms)`,
  );
});
