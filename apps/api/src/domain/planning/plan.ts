import { ok, type Result } from '../refusals/result';
import { Decimal, ZERO, sum } from '../units';
import { Board } from './board';
import { checkProblem } from './check';
import { dayScale } from './days';
import { madeItems, type Taken } from './makings';
import type { Need, Obstacle } from './moves';
import { placeNeed } from './place';
import type { Demand, PlanProblem } from './problem';
import type { Plan, Shortfall } from './planned';
import { readPlan } from './read-plan';
import type { PlanningRefusal } from './refusals';
import { searchPlan } from './search';
import { fromThousandths, thousandthsUp } from './sizes';

export interface PlanEffort {
  /** Times that demands which went short are moved to the front and all is planned anew. */
  readonly rounds: number;
  /** Tries of the full search, when the rounds leave something short. Zero: don't search. */
  readonly searchTries: number;
}

const USUAL: PlanEffort = { rounds: 8, searchTries: 20_000 };

/** Above this many demands a full search can't finish, so it isn't begun. */
const SEARCHABLE_DEMANDS = 8;

/**
 * Plans demands with due days back to what to make and buy when. Demands are placed one after the
 * other, the earliest due first and of these the dearest first, each by the greedy backward rule of
 * `placeNeed`. When some go short, those move to the front and all is planned anew, because who
 * goes first is all that a greedy rule can get wrong between orders; the round that loses least
 * money wins. A small week that is still short is searched in full, so that a plan is found when
 * there is one. A general solver was left out: batches, trays, rest days and shelf life make a
 * large integer programme, while this rule is explainable line by line at the bench.
 */
export const plan = (
  problem: PlanProblem,
  effort: PlanEffort = USUAL,
): Result<Plan, PlanningRefusal> => {
  const checked = checkProblem(problem);
  if (!checked.ok) return checked;
  let order = inOrder(problem.demands);
  let best = tryOrder(problem, order);
  for (let round = 0; round < effort.rounds && best.shortfalls.length > 0; round += 1) {
    const short = new Set(best.shortfalls.map(({ demand }) => demand));
    const promoted = [
      ...order.filter(({ id }) => short.has(id)),
      ...order.filter(({ id }) => !short.has(id)),
    ];
    if (promoted.every(({ id }, index) => id === order[index]?.id)) break;
    order = promoted;
    const tried = tryOrder(problem, order);
    if (isBetter(tried, best)) best = tried;
  }
  const searchable = effort.searchTries > 0 && problem.demands.length <= SEARCHABLE_DEMANDS;
  if (best.shortfalls.length === 0 || !searchable) return ok(best);
  return ok(searched(problem, effort.searchTries) ?? best);
};

const inOrder = (demands: readonly Demand[]): Demand[] =>
  [...demands].sort(
    (a, b) =>
      (a.dueDay < b.dueDay ? -1 : a.dueDay > b.dueDay ? 1 : 0) ||
      worth(b).comparedTo(worth(a)) ||
      (a.id < b.id ? -1 : 1),
  );

const worth = ({ valuePerUnit, quantity }: Demand): Decimal =>
  (valuePerUnit ?? ZERO).times(quantity);

/** Less money lost, and of the same money fewer units. */
const isBetter = (one: Plan, other: Plan): boolean =>
  (lost(one).comparedTo(lost(other)) || missing(one).comparedTo(missing(other))) < 0;

export const lost = ({ shortfalls }: Plan): Decimal =>
  sum(shortfalls.map(({ lostValue }) => lostValue));
export const missing = ({ shortfalls }: Plan): Decimal =>
  sum(shortfalls.map((shortfall) => shortfall.missing));

const freshBoard = (problem: PlanProblem): Board =>
  new Board(
    problem,
    dayScale(problem.today, problem.horizonDays, problem.calendar),
    madeItems(problem),
  );

const needOf = (demand: Demand, board: Board): Need => {
  const due = board.days.indexOf(demand.dueDay);
  return {
    item: demand.item,
    quantity: thousandthsUp(demand.quantity),
    byDay: due,
    untilDay: due + demand.minLifeDays,
    demand: demand.id,
  };
};

const tryOrder = (problem: PlanProblem, order: readonly Demand[]): Plan => {
  const board = freshBoard(problem);
  const served = new Map<string, Taken[]>();
  const shortfalls: Shortfall[] = [];
  for (const demand of order) {
    const taken: Taken[] = [];
    served.set(demand.id, taken);
    const need = needOf(demand, board);
    const obstacles: Obstacle[] = [];
    const met = need.byDay < 0 ? 0 : placeNeed(board, need, taken, obstacles).quantity;
    if (met < need.quantity) shortfalls.push(shortfallOf(demand, need.quantity - met, obstacles));
  }
  return readPlan(board, served, shortfalls);
};

const shortfallOf = (demand: Demand, short: number, obstacles: readonly Obstacle[]): Shortfall => {
  const distinct = new Map(obstacles.map((o): [string, Obstacle] => [`${o.kind}/${o.subject}`, o]));
  const quantity = fromThousandths(short);
  return {
    demand: demand.id,
    item: demand.item,
    missing: quantity,
    lostValue: quantity.times(demand.valuePerUnit ?? ZERO),
    because: [...distinct.values()],
  };
};

const searched = (problem: PlanProblem, tries: number): Plan | undefined => {
  const board = freshBoard(problem);
  const demands = inOrder(problem.demands).map((demand) => ({
    need: needOf(demand, board),
    into: [] as Taken[],
  }));
  if (demands.some(({ need }) => need.byDay < 0)) return undefined;
  if (!searchPlan(board, demands, tries)) return undefined;
  const served = new Map(demands.map(({ need, into }) => [need.demand, into]));
  return readPlan(board, served, []);
};
