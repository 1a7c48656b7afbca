import { Temporal } from 'temporal-polyfill';
import { ok, type Result } from '../refusals/result';
import type { InSteps } from '../steps';
import { Effort } from './effort';
import type { PlanProblem } from './problem';
import type { Plan, Shortfall } from './planned';
import type { PlanningRefusal } from './refusals';
import { lost, missing } from './shortfalls';
import { TriedWays } from './tried-ways';
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
const MAX_CLOSED_DAYS = 8;
/** Orders that are tried to be delivered later: those whose shortfall loses the most. */
const MAX_LATER_ORDERS = 8;

/** Changes that are tried in place of one another. */
interface Ladder {
  readonly steps: readonly Try[];
  /** From the least to the greatest of one kind, where more never mends less. */
  readonly rising: boolean;
}

/**
 * Ways out of what a plan leaves short, cheapest first. Each is planned anew with the change in it,
 * so what it says it mends it does mend; of each kind the least change that mends all is taken, or
 * the least that mends most. Going short is always among them: it costs the sales that are lost. So
 * much may go short that there is no time for every way: then the last ones aren't tried.
 */
export function* waysOut(
  problem: PlanProblem,
  short: Plan,
  prices: WayPrices,
  looks = new Effort(),
): InSteps<Result<WayOut[], PlanningRefusal>> {
  if (short.shortfalls.length === 0) return ok([]);
  const fewer: WayOut = { kind: 'send_fewer', cost: lost(short), stillMissing: missing(short) };
  const ways: WayOut[] = [fewer];
  const plans = new TriedWays(looks);
  const ladders = laddersFor(problem, short, prices);
  for (const [done, { steps, rising }] of ladders.entries()) {
    yield { done, total: ladders.length };
    const best = rising ? plans.leastOf(steps) : plans.bestOf(steps);
    if (best?.stillMissing.lessThan(fewer.stillMissing) === true) ways.push(best);
  }
  if (plans.refusal) return plans.refusal;
  return ok(
    ways.sort((a, b) => a.cost.comparedTo(b.cost) || a.stillMissing.comparedTo(b.stillMissing)),
  );
}

const laddersFor = (problem: PlanProblem, short: Plan, prices: WayPrices): Ladder[] => {
  const because = short.shortfalls.flatMap((shortfall) => shortfall.because);
  const subjects = (kind: string): string[] => [
    ...new Set(because.filter((o) => o.kind === kind).map((o) => o.subject)),
  ];
  return [
    ...subjects('moulds').flatMap((design) => {
      const price = prices.mouldPrice.get(design);
      return price
        ? [rising(MOULD_STEPS.map((count) => moreMoulds(problem, design, count, price)))]
        : [];
    }),
    ...subjects('minutes').flatMap((resource) => {
      const price = prices.minutePrice.get(resource);
      return price
        ? [rising(MINUTE_STEPS.map((minutes) => longerDays(problem, resource, minutes, price)))]
        : [];
    }),
    {
      steps: closedDaysBefore(problem, short).map((day) => openDay(problem, day, prices)),
      rising: false,
    },
    ...dearest(short).map(({ demand }) =>
      rising(LATER_STEPS.map((days) => deliverLater(problem, demand, days))),
    ),
  ];
};

const rising = (steps: readonly Try[]): Ladder => ({ steps, rising: true });

const dearest = ({ shortfalls }: Plan): Shortfall[] =>
  [...shortfalls].sort((a, b) => b.lostValue.comparedTo(a.lostValue)).slice(0, MAX_LATER_ORDERS);

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
