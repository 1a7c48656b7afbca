import { Temporal } from 'temporal-polyfill';
import { Decimal, ZERO, sum } from '../units';
import type { PlanProblem } from './problem';
import type { Plan } from './planned';

export interface WayPrices {
  /** Money for one more tray of a design; a design that is absent can't be bought. */
  readonly mouldPrice: ReadonlyMap<string, Decimal>;
  /** Money for one minute of a resource beyond the usual; absent: can't be had. */
  readonly minutePrice: ReadonlyMap<string, Decimal>;
}

/** A change to the workshop or to an order that makes more possible, tried out and priced. */
export type WayOut = (
  | { readonly kind: 'more_moulds'; readonly design: string; readonly count: number }
  | { readonly kind: 'longer_days'; readonly resource: string; readonly minutesPerDay: number }
  | { readonly kind: 'open_closed_day'; readonly day: string }
  | { readonly kind: 'deliver_later'; readonly demand: string; readonly days: number }
  | { readonly kind: 'send_fewer' }
) & {
  /** Money that it takes, sales lost by what is still missing included. */
  readonly cost: Decimal;
  /** Units still missing with it. */
  readonly stillMissing: Decimal;
};

export interface Try {
  readonly way: WayDraft;
  readonly problem: PlanProblem;
  readonly spend: Spend;
}
type WayDraft = WayOut extends infer W
  ? W extends WayOut
    ? Omit<W, 'cost' | 'stillMissing'>
    : never
  : never;
type Spend = (planned: Plan) => Decimal;

export const moreMoulds = (
  problem: PlanProblem,
  design: string,
  count: number,
  price: Decimal,
): Try => {
  const moulds = new Map(problem.moulds);
  moulds.set(design, (moulds.get(design) ?? 0) + count);
  const spend = (): Decimal => price.times(count);
  return { way: { kind: 'more_moulds', design, count }, problem: { ...problem, moulds }, spend };
};

export const longerDays = (
  problem: PlanProblem,
  resource: string,
  minutesPerDay: number,
  price: Decimal,
): Try => {
  const usual = problem.capacities.find((capacity) => capacity.resource === resource);
  const limitOn = (day: string): number => usual?.exceptions?.get(day) ?? usual?.minutesPerDay ?? 0;
  const capacities = problem.capacities.map((capacity) =>
    capacity.resource === resource
      ? {
          ...capacity,
          minutesPerDay: capacity.minutesPerDay + minutesPerDay,
          exceptions: new Map(
            [...(capacity.exceptions ?? [])].map(([day, m]) => [day, m + minutesPerDay]),
          ),
        }
      : capacity,
  );
  const spend: Spend = (planned) => {
    const beyond = [...minutesByDay(planned, resource)].map(([day, minutes]) =>
      Math.max(0, minutes - limitOn(day)),
    );
    return price.times(sum(beyond.map((minutes) => new Decimal(minutes))));
  };
  const way = { kind: 'longer_days' as const, resource, minutesPerDay };
  return { way, problem: { ...problem, capacities }, spend };
};

export const openDay = (problem: PlanProblem, day: string, prices: WayPrices): Try => {
  const calendar = { ...problem.calendar, openDays: [...problem.calendar.openDays, day] };
  const spend: Spend = (planned) =>
    sum(
      [...prices.minutePrice].map(([resource, price]) =>
        price.times(minutesByDay(planned, resource).get(day) ?? 0),
      ),
    );
  return { way: { kind: 'open_closed_day', day }, problem: { ...problem, calendar }, spend };
};

export const deliverLater = (problem: PlanProblem, id: string, days: number): Try => {
  const demands = problem.demands.map((demand) =>
    demand.id === id
      ? { ...demand, dueDay: Temporal.PlainDate.from(demand.dueDay).add({ days }).toString() }
      : demand,
  );
  const way = { kind: 'deliver_later' as const, demand: id, days };
  return { way, problem: { ...problem, demands }, spend: () => ZERO };
};

const minutesByDay = (planned: Plan, resource: string): Map<string, number> => {
  const minutes = new Map<string, number>();
  for (const batch of planned.batches) {
    for (const use of batch.minutes) {
      if (use.resource !== resource) continue;
      minutes.set(batch.day, (minutes.get(batch.day) ?? 0) + use.minutes);
    }
  }
  return minutes;
};
