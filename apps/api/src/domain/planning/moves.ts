import type { Board } from './board';
import type { MadeItem, Slice, Supply, Taken } from './makings';
import type { Obstacles } from './obstacles';
import type { Thousandths } from './sizes';

/** What is wanted of an item: so much, usable by a day, good until a day. */
export interface Need {
  readonly item: string;
  readonly quantity: Thousandths;
  readonly byDay: number;
  readonly untilDay: number;
  readonly demand: string;
}

/**
 * Takes from what is there, the shortest-lived that lasts long enough first: first expired, first
 * out, without giving a customer less life than was promised.
 * @returns how much was taken and the last good day of the shortest-lived part.
 */
export const takeFromSupplies = (
  board: Board,
  need: Need,
  into: Taken[],
): { readonly taken: Thousandths; readonly lastDay: number } => {
  const usable = (board.supplies.get(need.item) ?? [])
    .filter(
      (supply) =>
        supply.left > 0 && supply.readyDay <= need.byDay && supply.lastDay >= need.untilDay,
    )
    .sort((a, b) => a.lastDay - b.lastDay || a.readyDay - b.readyDay);
  let taken = 0;
  let lastDay = Infinity;
  for (const supply of usable) {
    if (taken === need.quantity) break;
    const quantity = Math.min(supply.left, need.quantity - taken);
    board.takeFrom(supply, quantity);
    board.push(into, { item: need.item, from: supply.from, quantity });
    taken += quantity;
    lastDay = Math.min(lastDay, supply.lastDay);
  }
  return { taken, lastDay };
};

/** Buying is possible when the supplier can be there in time; fresh goods are taken to last. */
export const buy = (board: Board, need: Need, into: Taken[], obstacles: Obstacles): boolean => {
  const leadDays = board.problem.items.get(need.item)?.leadDays ?? 0;
  if (leadDays > need.byDay) {
    obstacles.note('lead_time', need.item);
    return false;
  }
  const { item, quantity, byDay, demand } = need;
  board.push(board.bought, { item, quantity, byDay, demand });
  board.push(into, { item, from: 'bought', quantity });
  return true;
};

/** First day on which it can be made and still last: later than that it is fresher. */
export const earliestDay = ({ recipe }: MadeItem, untilDay: number): number =>
  recipe.lifeDays === undefined ? 0 : Math.max(0, untilDay - recipe.lifeDays);

/** How many trays, boxes or milligrams the people, tanks and moulds of a day still allow. */
export const roomOn = (
  board: Board,
  made: MadeItem,
  day: number,
  wanted: number,
  obstacles: Obstacles,
): number => {
  let room = wanted;
  for (const use of made.recipe.uses) {
    const fixed = board.hasStarted(made.item.id, day) ? 0 : use.minutesFixed;
    const free = board.freeMinutes(use.resource, day) - fixed;
    const perCount = use.minutesPerUnit * made.sizes.unitsPerCount;
    // A billionth of a count is the binary error of the minutes, not a count.
    const fits = perCount > 0 ? Math.floor(free / perCount + 1e-9) : free >= 0 ? Infinity : 0;
    if (fits < room) obstacles.note('minutes', use.resource);
    room = Math.min(room, fits);
  }
  const { tray } = made.recipe;
  if (tray) {
    const moulds = board.freeMoulds(tray.design, day, tray.occupiedDays);
    if (moulds < room) obstacles.note('moulds', tray.design);
    room = Math.min(room, moulds);
  }
  return Math.max(0, room);
};

export interface Making {
  readonly slice: Slice;
  /** What it leaves beyond what it was made for. */
  readonly surplus: Supply;
  readonly inputs: readonly Need[];
}

/** Takes minutes and moulds for a making and says what it needs. Its inputs are not placed yet. */
export const beginMaking = (
  board: Board,
  made: MadeItem,
  count: number,
  day: number,
  need: Need,
): Making => {
  const { recipe, sizes, item } = made;
  for (const use of recipe.uses) {
    const fixed = board.hasStarted(item.id, day) ? 0 : use.minutesFixed;
    const minutes = fixed + use.minutesPerUnit * sizes.unitsPerCount * count;
    board.takeMinutes(use.resource, day, minutes);
  }
  board.start(item.id, day);
  if (recipe.tray) board.takeMoulds(recipe.tray.design, day, recipe.tray.occupiedDays, count);
  const good = sizes.goodOf(count);
  const latestDay = need.byDay - recipe.restDays;
  const readyDay = day + recipe.restDays;
  const { demand, untilDay } = need;
  // Its inputs last at least until the day they were asked to; more is known once they are placed.
  const lastDay = Math.min(untilDay, lastDayOf(made, day));
  const when = { day, latestDay, readyDay, lastDay };
  const slice: Slice = { item: item.id, ...when, count, good, demand, taken: [] };
  board.push(board.slices, slice);
  const quantities = sizes.takenBy(count);
  const inputs = recipe.lines.map(({ component }, index): Need => {
    const caps = board.problem.items.get(component)?.capsDate ?? true;
    return {
      item: component,
      quantity: quantities[index] ?? 0,
      byDay: day,
      untilDay: caps ? Math.max(untilDay, day) : day,
      demand,
    };
  });
  const surplus: Supply = {
    from: { slice },
    left: Math.max(0, good - need.quantity),
    readyDay,
    lastDay,
  };
  board.addSupply(item.id, surplus);
  return { slice, surplus, inputs };
};

export const lastDayOf = ({ recipe }: MadeItem, day: number): number =>
  recipe.lifeDays === undefined ? Infinity : day + recipe.lifeDays;
