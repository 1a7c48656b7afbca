import { Temporal } from 'temporal-polyfill';
import { ok, type Result } from '../refusals/result';
import { lost, missing, plan } from './plan';
import type { PlanProblem } from './problem';
import type { Plan } from './planned';
import type { PlanningRefusal } from './refusals';
import {
  deliverLater,
  longerDays,
  moreMoulds,
  openDay,
  type Try,
  type WayOut,
  type WayPrices,
} from './way-tries';

const MOULD_STEPS = [1, 2, 3, 4, 5, 6, 7, 8, 10, 12];
const MINUTE_STEPS = [60, 120, 180, 240];
const LATER_STEPS = [1, 2, 3, 5, 7];
/** Every way is a plan of its own, so a hopeless season doesn't try for minutes on end. */
const QUICK = { rounds: 0, searchTries: 0 };
const MAX_CLOSED_DAYS = 8;

/**
 * Ways out of what a plan leaves short, cheapest first. Each is planned anew with the change in it,
 * so what it says it mends it does mend; of each kind the least change that mends all is taken, or
 * the one that mends most. Going short is always among them: it costs the sales that are lost.
 */
export const waysOut = (
  problem: PlanProblem,
  short: Plan,
  prices: WayPrices,
): Result<WayOut[], PlanningRefusal> => {
  if (short.shortfalls.length === 0) return ok([]);
  const fewer: WayOut = { kind: 'send_fewer', cost: lost(short), stillMissing: missing(short) };
  const ways: WayOut[] = [fewer];
  for (const ladder of laddersFor(problem, short, prices)) {
    let best: WayOut | undefined;
    for (const step of ladder) {
      const planned = plan(step.problem, QUICK);
      if (!planned.ok) return planned;
      const stillMissing = missing(planned.value);
      const helps = stillMissing.lessThan(best?.stillMissing ?? fewer.stillMissing);
      if (!helps) continue;
      const cost = step.spend(planned.value).plus(lost(planned.value));
      best = { ...step.way, cost, stillMissing };
      if (stillMissing.isZero()) break;
    }
    if (best) ways.push(best);
  }
  return ok(
    ways.sort((a, b) => a.cost.comparedTo(b.cost) || a.stillMissing.comparedTo(b.stillMissing)),
  );
};

const laddersFor = (problem: PlanProblem, short: Plan, prices: WayPrices): Try[][] => {
  const because = short.shortfalls.flatMap((shortfall) => shortfall.because);
  const subjects = (kind: string): string[] => [
    ...new Set(because.filter((o) => o.kind === kind).map((o) => o.subject)),
  ];
  return [
    ...subjects('moulds').flatMap((design) => {
      const price = prices.mouldPrice.get(design);
      return price ? [MOULD_STEPS.map((count) => moreMoulds(problem, design, count, price))] : [];
    }),
    ...subjects('minutes').flatMap((resource) => {
      const price = prices.minutePrice.get(resource);
      return price
        ? [MINUTE_STEPS.map((minutes) => longerDays(problem, resource, minutes, price))]
        : [];
    }),
    closedDaysBefore(problem, short).map((day) => openDay(problem, day, prices)),
    ...short.shortfalls.map(({ demand }) =>
      LATER_STEPS.map((days) => deliverLater(problem, demand, days)),
    ),
  ];
};

/** Closed days before the last order that goes short, the latest first. */
const closedDaysBefore = (problem: PlanProblem, short: Plan): string[] => {
  const late = new Set(short.shortfalls.map(({ demand }) => demand));
  const dues = problem.demands.filter(({ id }) => late.has(id)).map(({ dueDay }) => dueDay);
  const last = [...dues].sort().at(-1) ?? problem.today;
  const first = Temporal.PlainDate.from(problem.today);
  const length = Math.max(0, first.until(last, { largestUnit: 'days' }).days);
  return Array.from({ length }, (_, offset) => first.add({ days: offset }))
    .filter(
      (day) =>
        (problem.calendar.closedWeekdays.includes(day.dayOfWeek) ||
          problem.calendar.closedDays.includes(day.toString())) &&
        !problem.calendar.openDays.includes(day.toString()),
    )
    .map((day) => day.toString())
    .reverse()
    .slice(0, MAX_CLOSED_DAYS);
};
