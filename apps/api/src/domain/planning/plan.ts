import { ok, type Result } from '../refusals/result';
import { atOnce, type InSteps } from '../steps';
import { type Decimal, ZERO } from '../units';
import { Board } from './board';
import { checkProblem } from './check';
import { dayScale } from './days';
import { Effort } from './effort';
import { madeItems, type Taken } from './makings';
import type { Need } from './moves';
import { Obstacles } from './obstacles';
import { placeNeed } from './place';
import type { Demand, PlanProblem } from './problem';
import type { Plan, Shortfall } from './planned';
import { readPlan } from './read-plan';
import type { PlanningRefusal } from './refusals';
import { searchPlan } from './search';
import { isBetter, shortfallOf } from './shortfalls';
import { thousandthsUp } from './sizes';

export interface PlanEffort {
  /** Times that demands which went short are moved to the front and all is planned anew. */
  readonly rounds: number;
  /** Tries of the full search, when the rounds leave something short. Zero: don't search. */
  readonly searchTries: number;
  /** Of all rounds together. What is left when none is left goes short and is said not to be tried. */
  readonly looks?: Effort;
}

/**
 * A season of 60 orders takes some 8,000 looks when all of it fits, and 40,000 when a third goes short.
 * The usual limit of looks is for what can't fit by far, where going on would only change the wait.
 */
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
export function* planInSteps(
  problem: PlanProblem,
  effort: PlanEffort = USUAL,
): InSteps<Result<Plan, PlanningRefusal>> {
  const checked = checkProblem(problem);
  if (!checked.ok) return checked;
  const fresh = boardsFor(problem);
  const looks = effort.looks ?? new Effort();
  const before = looks.left;
  let order = inOrder(problem.demands);
  let best = yield* tryOrder(fresh(looks), order);
  const wholeRound = before - looks.left;
  for (let round = 0; round < effort.rounds && best.shortfalls.length > 0; round += 1) {
    const short = new Set(best.shortfalls.map(({ demand }) => demand));
    const promoted = [
      ...order.filter(({ id }) => short.has(id)),
      ...order.filter(({ id }) => !short.has(id)),
    ];
    if (promoted.every(({ id }, index) => id === order[index]?.id)) break;
    // A round that must stop half-way leaves more short than the one before.
    if (looks.left < wholeRound) break;
    order = promoted;
    const tried = yield* tryOrder(fresh(looks), order);
    if (isBetter(tried, best)) best = tried;
  }
  const searchable = effort.searchTries > 0 && problem.demands.length <= SEARCHABLE_DEMANDS;
  if (best.shortfalls.length === 0 || !searchable) return ok(best.read());
  return ok(searched(fresh(looks), problem.demands, effort.searchTries) ?? best.read());
}

export const plan = (
  problem: PlanProblem,
  effort: PlanEffort = USUAL,
): Result<Plan, PlanningRefusal> => atOnce(planInSteps(problem, effort));

const inOrder = (demands: readonly Demand[]): Demand[] =>
  [...demands].sort(
    (a, b) =>
      (a.dueDay < b.dueDay ? -1 : a.dueDay > b.dueDay ? 1 : 0) ||
      worth(b).comparedTo(worth(a)) ||
      (a.id < b.id ? -1 : 1),
  );

const worth = ({ valuePerUnit, quantity }: Demand): Decimal =>
  (valuePerUnit ?? ZERO).times(quantity);

/** Empty boards of one problem; what its recipes come to is worked out once for all of them. */
const boardsFor = (problem: PlanProblem): ((effort: Effort) => Board) => {
  const days = dayScale(problem.today, problem.horizonDays, problem.calendar);
  const made = madeItems(problem);
  return (effort) => new Board(problem, days, made, effort);
};

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

/** One go at all demands. It is read out only when it is the best. */
interface Tried {
  readonly shortfalls: readonly Shortfall[];
  readonly read: () => Plan;
}

/** How many rounds there will be nobody knows, so no step says how far it is. */
function* tryOrder(board: Board, order: readonly Demand[]): InSteps<Tried> {
  const served = new Map<string, Taken[]>();
  const shortfalls: Shortfall[] = [];
  for (const demand of order) {
    const taken: Taken[] = [];
    served.set(demand.id, taken);
    const need = needOf(demand, board);
    const obstacles = new Obstacles();
    const met = need.byDay < 0 ? 0 : placeNeed(board, need, taken, obstacles).quantity;
    if (met < need.quantity) shortfalls.push(shortfallOf(demand, need.quantity - met, obstacles));
    board.settle();
    yield undefined;
  }
  return { shortfalls, read: () => readPlan(board, served, shortfalls) };
}

const searched = (board: Board, all: readonly Demand[], tries: number): Plan | undefined => {
  const demands = inOrder(all).map((demand) => ({
    need: needOf(demand, board),
    into: [] as Taken[],
  }));
  if (demands.some(({ need }) => need.byDay < 0)) return undefined;
  if (!searchPlan(board, demands, tries)) return undefined;
  const served = new Map(demands.map(({ need, into }) => [need.demand, into]));
  return readPlan(board, served, []);
};
