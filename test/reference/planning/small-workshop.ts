// Invented workshops for the planner's checks.
import type { Demand, PlanItem, PlanProblem } from '@api/domain/planning';
import { Decimal } from '@api/domain/units';

export const D = (value: number | string): Decimal => new Decimal(value);
export const TODAY = '2026-11-02'; // a Monday

export const bought = (id: string, leadDays = 0): PlanItem => ({ id, capsDate: true, leadDays });

export const cooked = (
  id: string,
  over: { minutesFixed?: number; lifeDays?: number; restDays?: number } = {},
): PlanItem => ({
  id,
  capsDate: true,
  leadDays: 0,
  recipe: {
    step: 'cook',
    lines: [{ component: 'cream', quantityPerUnit: D(1) }],
    goodRatio: D(1),
    uses: [{ resource: 'people', minutesFixed: over.minutesFixed ?? 30, minutesPerUnit: 0 }],
    restDays: over.restDays ?? 0,
    ...(over.lifeDays === undefined ? {} : { lifeDays: over.lifeDays }),
  },
});

export const cast = (
  id: string,
  filling: string,
  over: { design?: string; minutesPerTray?: number; lifeDays?: number; goodRatio?: string } = {},
): PlanItem => ({
  id,
  capsDate: true,
  leadDays: 0,
  recipe: {
    step: 'cast',
    lines: [
      { component: filling, quantityPerUnit: D(5) },
      { component: 'dark', quantityPerUnit: D(4) },
    ],
    goodRatio: D(over.goodRatio ?? 1),
    tray: { design: over.design ?? 'dome', cavities: 24, occupiedDays: 1 },
    uses: [
      { resource: 'people', minutesFixed: 0, minutesPerUnit: (over.minutesPerTray ?? 48) / 24 },
    ],
    restDays: 1,
    ...(over.lifeDays === undefined ? {} : { lifeDays: over.lifeDays }),
  },
});

export const packed = (id: string, slots: Record<string, number>, minutes = 2): PlanItem => ({
  id,
  capsDate: true,
  leadDays: 0,
  recipe: {
    step: 'pack',
    lines: Object.entries(slots).map(([component, quantity]) => ({
      component,
      quantityPerUnit: D(quantity),
    })),
    goodRatio: D(1),
    uses: [{ resource: 'people', minutesFixed: 0, minutesPerUnit: minutes }],
    restDays: 0,
  },
});

export const demand = (
  id: string,
  item: string,
  quantity: number,
  dueDay: string,
  over: Partial<Demand> = {},
): Demand => ({
  id,
  item,
  quantity: D(quantity),
  dueDay,
  minLifeDays: 0,
  ...over,
});

/** One dome mould of 24 in four trays, eight hours of people, cream today and couverture in stock. */
export const workshop = (
  items: readonly PlanItem[],
  over: Partial<PlanProblem> = {},
): PlanProblem => ({
  today: TODAY,
  horizonDays: 14,
  calendar: { closedWeekdays: [6, 7], closedDays: [], openDays: [] },
  items: new Map(
    [bought('cream'), bought('dark'), bought('carton'), ...items].map((item) => [item.id, item]),
  ),
  lots: [],
  demands: [],
  capacities: [{ resource: 'people', minutesPerDay: 480 }],
  moulds: new Map([['dome', 4]]),
  begun: [],
  ...over,
});
