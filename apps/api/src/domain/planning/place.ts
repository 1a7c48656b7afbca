import type { Board } from './board';
import type { MadeItem, Taken } from './makings';
import {
  beginMaking,
  buy,
  earliestDay,
  lastDayOf,
  roomOn,
  takeFromSupplies,
  type Need,
} from './moves';
import type { Obstacles } from './obstacles';
import type { Thousandths } from './sizes';

/** How much of a need was met, and the last good day of what met it. */
export interface Placed {
  readonly quantity: Thousandths;
  readonly lastDay: number;
}

/**
 * The greedy rule: take from stock what lasts long enough, and make or buy the rest as late as
 * people, tanks, moulds, rest and life allow, spilling to earlier days when a day is full. As late
 * as possible keeps goods fresh and money in the till, and for equal trays with due days it is
 * also the choice that fits the most. What can't be placed is left out of the answer.
 */
export const placeNeed = (
  board: Board,
  need: Need,
  into: Taken[],
  obstacles: Obstacles,
): Placed => {
  board.effort.look();
  const { taken, lastDay } = takeFromSupplies(board, need, into);
  if (taken === need.quantity) return { quantity: taken, lastDay };
  const rest = { ...need, quantity: need.quantity - taken };
  const made = board.madeItem(need.item);
  if (!made) {
    const bought = buy(board, rest, into, obstacles);
    return { quantity: bought ? need.quantity : taken, lastDay };
  }
  const placed = make(board, made, rest, into, obstacles);
  return { quantity: taken + placed.quantity, lastDay: Math.min(lastDay, placed.lastDay) };
};

const make = (
  board: Board,
  made: MadeItem,
  need: Need,
  into: Taken[],
  obstacles: Obstacles,
): Placed => {
  const latest = Math.min(need.byDay - made.recipe.restDays, board.days.length - 1);
  const earliest = earliestDay(made, need.untilDay);
  noteWindow(board, made, earliest, latest, obstacles);
  let missing = need.quantity;
  let lastDay = Infinity;
  for (let day = latest; day >= earliest && missing > 0; day -= 1) {
    if (!board.days.isWorking(day)) continue;
    if (!board.effort.look()) {
      obstacles.note('not_tried', made.item.id);
      break;
    }
    const wanted = made.sizes.countFor(missing);
    const room = roomOn(board, made, day, wanted, obstacles);
    const attempt = (count: number): Placed | undefined =>
      makeOn(board, made, count, day, { ...need, quantity: missing }, into, obstacles);
    const placed = room > 0 ? mostOf(board, made, room, attempt) : undefined;
    if (!placed) continue;
    missing -= placed.quantity;
    lastDay = Math.min(lastDay, placed.lastDay);
  }
  return { quantity: need.quantity - missing, lastDay };
};

/** The whole room if its inputs can be had, else as many as can (halving); a filling whole or not. */
const mostOf = (
  board: Board,
  made: MadeItem,
  room: number,
  attempt: (count: number) => Placed | undefined,
): Placed | undefined => {
  const isPossible = (count: number): boolean => {
    const mark = board.mark();
    const possible = count < room && attempt(count) !== undefined;
    board.rollBack(mark);
    return possible;
  };
  const whole = attempt(room);
  if (whole || made.recipe.step === 'cook' || !isPossible(1)) return whole;
  let [possible, impossible] = [1, room];
  while (impossible - possible > 1) {
    const middle = Math.floor((possible + impossible) / 2);
    if (isPossible(middle)) possible = middle;
    else impossible = middle;
  }
  return attempt(possible);
};

const makeOn = (
  board: Board,
  made: MadeItem,
  count: number,
  day: number,
  need: Need,
  into: Taken[],
  obstacles: Obstacles,
): Placed | undefined => {
  const mark = board.mark();
  const { slice, surplus, inputs } = beginMaking(board, made, count, day, need);
  let lastDay = lastDayOf(made, day);
  for (const input of inputs) {
    const placed = placeNeed(board, input, slice.taken, obstacles);
    if (placed.quantity < input.quantity) {
      board.rollBack(mark);
      return undefined;
    }
    const caps = board.problem.items.get(input.item)?.capsDate ?? true;
    if (caps) lastDay = Math.min(lastDay, placed.lastDay);
  }
  board.setLastDay(surplus, lastDay);
  board.setLastDay(slice, lastDay);
  const quantity = Math.min(slice.good, need.quantity);
  board.push(into, { item: need.item, from: { slice }, quantity });
  return { quantity, lastDay };
};

const noteWindow = (
  board: Board,
  made: MadeItem,
  earliest: number,
  latest: number,
  obstacles: Obstacles,
): void => {
  const subject = made.item.id;
  if (latest < earliest && earliest > 0) obstacles.note('life', subject);
  else {
    for (let day = earliest; day <= latest; day += 1) if (board.days.isWorking(day)) return;
    obstacles.note('working_days', subject);
  }
};
