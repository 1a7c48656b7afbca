// Checks a plan against the workshop by its own reckoning: it shares no code with the planner.
import type { Plan, PlanProblem, PlannedUse } from '@api/domain/planning';
import { Temporal } from 'temporal-polyfill';

const plusDays = (day: string, days: number): string =>
  Temporal.PlainDate.from(day).add({ days }).toString();

const FAR = '9999-12-31';

// One list of checks reads better here than ten functions.
/* eslint-disable complexity */
/** Everything that is wrong with a plan, in words; empty for a sound one. */
export const faultsOf = (problem: PlanProblem, plan: Plan): string[] => {
  const faults: string[] = [];
  const check = (holds: boolean, fault: string): void => {
    if (!holds) faults.push(fault);
  };
  const batchOf = new Map(plan.batches.map((batch) => [batch.id, batch]));
  const lotOf = new Map(problem.lots.map((lot) => [lot.lot, lot]));
  const begunOf = new Map(problem.begun.map((batch) => [batch.batch, batch]));

  /** Last good day, from the dates of everything inside. */
  const lastDayOf = (use: PlannedUse): string => {
    const { source } = use;
    if (source.kind === 'bought') return FAR;
    if (source.kind === 'lot') return lotOf.get(source.lot)?.lastDay ?? FAR;
    if (source.kind === 'begun') return begunOf.get(source.batch)?.lastDay ?? FAR;
    const batch = batchOf.get(source.batch);
    if (!batch) return '0000-01-01';
    const life = problem.items.get(batch.item)?.recipe?.lifeDays;
    const inside = batch.uses
      .filter(({ item }) => problem.items.get(item)?.capsDate)
      .map(lastDayOf);
    return [life === undefined ? FAR : plusDays(batch.day, life), ...inside].sort()[0] ?? FAR;
  };
  const readyOf = ({ source, item }: PlannedUse): string => {
    if (source.kind === 'lot') return problem.today;
    if (source.kind === 'bought')
      return plusDays(problem.today, problem.items.get(item)?.leadDays ?? 0);
    if (source.kind === 'begun') return begunOf.get(source.batch)?.readyDay ?? FAR;
    return batchOf.get(source.batch)?.readyDay ?? FAR;
  };

  const given = new Map<string, number>();
  const use = (taken: PlannedUse, day: string): void => {
    const { source } = taken;
    check(readyOf(taken) <= day, `${taken.item} is used on ${day} before it is ready`);
    check(lastDayOf(taken) >= day, `${taken.item} is past its date on ${day}`);
    if (source.kind === 'lot')
      check(!lotOf.get(source.lot)?.held, `held lot ${source.lot} is used`);
    const key = JSON.stringify(source);
    if (source.kind !== 'bought') given.set(key, (given.get(key) ?? 0) + taken.quantity.toNumber());
  };

  for (const batch of plan.batches) {
    const recipe = problem.items.get(batch.item)?.recipe;
    const weekday = Temporal.PlainDate.from(batch.day).dayOfWeek;
    const { closedDays, closedWeekdays, openDays } = problem.calendar;
    const open =
      openDays.includes(batch.day) ||
      (!closedDays.includes(batch.day) && !closedWeekdays.includes(weekday));
    check(open, `${batch.id} is made on a closed day`);
    check(batch.day >= problem.today, `${batch.id} should have begun already`);
    check(batch.day <= batch.latestDay, `${batch.id} begins after its latest day`);
    check(
      batch.readyDay === plusDays(batch.day, recipe?.restDays ?? 0),
      `${batch.id} doesn't rest`,
    );
    batch.uses.forEach((taken) => use(taken, batch.day));
    const units =
      recipe?.step === 'cast' && recipe.tray
        ? (batch.trays ?? 0) * recipe.tray.cavities
        : batch.quantity.dividedBy(recipe?.goodRatio ?? 1).toNumber();
    check(
      batch.quantity.toNumber() <= units * (recipe?.goodRatio.toNumber() ?? 1) + 1e-6,
      `${batch.id} gives too much`,
    );
    for (const line of recipe?.lines ?? []) {
      const taken = batch.uses.filter(({ item }) => item === line.component);
      const total = taken.reduce((sum, { quantity }) => sum + quantity.toNumber(), 0);
      check(
        total >= line.quantityPerUnit.toNumber() * units - 1e-6,
        `${batch.id} lacks ${line.component}`,
      );
    }
  }
  for (const { demand: id, uses } of plan.served) {
    const demand = problem.demands.find((candidate) => candidate.id === id);
    if (!demand) continue;
    const until = plusDays(demand.dueDay, demand.minLifeDays);
    uses.forEach((taken) => {
      use(taken, demand.dueDay);
      check(taken.item === demand.item, `${id} gets ${taken.item}`);
      check(lastDayOf(taken) >= until, `${id} gets ${taken.item} with too short a life`);
    });
    const short = plan.shortfalls.find((shortfall) => shortfall.demand === id);
    const got = uses.reduce((sum, { quantity }) => sum + quantity.toNumber(), 0);
    const missing = short?.missing.toNumber() ?? 0;
    check(Math.abs(got + missing - demand.quantity.toNumber()) < 1e-6, `${id} doesn't add up`);
  }
  for (const [key, quantity] of given) {
    const source = JSON.parse(key) as { kind: string; lot?: string; batch?: string };
    const there =
      source.kind === 'lot'
        ? lotOf.get(source.lot ?? '')?.quantity
        : source.kind === 'begun'
          ? begunOf.get(source.batch ?? '')?.quantity
          : batchOf.get(source.batch ?? '')?.quantity;
    check(quantity <= (there?.toNumber() ?? 0) + 1e-6, `${key} gives more than it has`);
  }
  return [...faults, ...overloads(problem, plan)];
};

/* eslint-enable complexity */

const overloads = (problem: PlanProblem, plan: Plan): string[] => {
  const faults: string[] = [];
  for (let offset = 0; offset < problem.horizonDays; offset += 1) {
    const day = plusDays(problem.today, offset);
    for (const { resource, minutesPerDay, exceptions } of problem.capacities) {
      const planned = plan.batches
        .filter((batch) => batch.day === day)
        .flatMap(({ minutes }) => minutes.filter((use) => use.resource === resource));
      const busy = problem.begun
        .flatMap((batch) => batch.busy)
        .filter((use) => use.resource === resource && use.day === day);
      const taken = [...planned, ...busy].reduce((sum, { minutes }) => sum + minutes, 0);
      const limit = exceptions?.get(day) ?? minutesPerDay;
      if (planned.length > 0 && taken > limit + 1e-6)
        faults.push(`${resource} works ${taken} on ${day}`);
    }
    for (const [design, count] of problem.moulds) {
      const planned = plan.batches.filter((batch) => {
        const tray = problem.items.get(batch.item)?.recipe?.tray;
        return (
          batch.design === design &&
          batch.day <= day &&
          day < plusDays(batch.day, tray?.occupiedDays ?? 0)
        );
      });
      const begun = problem.begun.filter(
        ({ moulds }) => moulds?.design === design && day <= moulds.untilDay,
      );
      const taken =
        planned.reduce((sum, { trays }) => sum + (trays ?? 0), 0) +
        begun.reduce((sum, { moulds }) => sum + (moulds?.count ?? 0), 0);
      if (planned.length > 0 && taken > count)
        faults.push(`${taken} of ${count} moulds ${design} on ${day}`);
    }
  }
  return faults;
};
