import { type Decimal, ZERO, sum } from '../units';
import type { Obstacles } from './obstacles';
import type { Demand } from './problem';
import type { Plan, Shortfall } from './planned';
import { fromThousandths } from './sizes';

export const shortfallOf = (demand: Demand, short: number, obstacles: Obstacles): Shortfall => {
  const quantity = fromThousandths(short);
  return {
    demand: demand.id,
    item: demand.item,
    missing: quantity,
    lostValue: quantity.times(demand.valuePerUnit ?? ZERO),
    because: obstacles.all,
  };
};

type Short = Pick<Plan, 'shortfalls'>;

/** Less money lost, and of the same money fewer units. */
export const isBetter = (one: Short, other: Short): boolean =>
  (lost(one).comparedTo(lost(other)) || missing(one).comparedTo(missing(other))) < 0;

export const lost = ({ shortfalls }: Short): Decimal =>
  sum(shortfalls.map(({ lostValue }) => lostValue));
export const missing = ({ shortfalls }: Short): Decimal =>
  sum(shortfalls.map((shortfall) => shortfall.missing));
