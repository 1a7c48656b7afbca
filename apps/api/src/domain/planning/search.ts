import type { Board } from './board';
import type { Taken } from './makings';
import { beginMaking, buy, earliestDay, roomOn, takeFromSupplies, type Need } from './moves';
import { Obstacles } from './obstacles';

/** A need still to be placed; the parts of a split making go to ever earlier days. */
interface Task {
  readonly need: Need;
  readonly into: Taken[];
  readonly latestDay: number;
  readonly next: Task | undefined;
}

/**
 * Tries every way of spreading the makings over the days until one meets every need in full. It is
 * for the small and tight week that the greedy rule can't fit because it fills a late day that
 * something else has to have; `limit` bounds the tries, so a big plan stays with the greedy rule.
 * @returns true with the plan on the board, or false with the board as it was.
 */
export const searchPlan = (
  board: Board,
  needs: readonly { readonly need: Need; readonly into: Taken[] }[],
  limit: number,
): boolean => {
  let tries = 0;
  const solve = (task: Task | undefined): boolean => {
    if (!task) return true;
    tries += 1;
    if (tries > limit) return false;
    const mark = board.mark();
    if (place(task)) return true;
    board.rollBack(mark);
    return false;
  };

  const place = ({ need, into, latestDay, next }: Task): boolean => {
    const { taken } = takeFromSupplies(board, need, into);
    const rest = { ...need, quantity: need.quantity - taken };
    if (rest.quantity === 0) return solve(next);
    const made = board.madeItem(need.item);
    if (!made) return buy(board, rest, into, new Obstacles()) && solve(next);
    const latest = Math.min(latestDay, need.byDay - made.recipe.restDays, board.days.length - 1);
    const wanted = made.sizes.countFor(rest.quantity);
    const least = made.recipe.step === 'cook' ? wanted : 1;
    for (let day = latest; day >= earliestDay(made, need.untilDay); day -= 1) {
      if (!board.days.isWorking(day)) continue;
      const room = roomOn(board, made, day, wanted, new Obstacles());
      for (let count = room; count >= least; count -= 1) {
        if (tryMaking({ need: rest, into, latestDay, next }, count, day)) return true;
        if (tries > limit) return false;
      }
    }
    return false;
  };

  const tryMaking = ({ need, into, next }: Task, count: number, day: number): boolean => {
    const made = board.madeItem(need.item);
    if (!made) return false;
    const mark = board.mark();
    const { slice, inputs } = beginMaking(board, made, count, day, need);
    const quantity = Math.min(slice.good, need.quantity);
    board.push(into, { item: need.item, from: { slice }, quantity });
    const missing = need.quantity - quantity;
    let tasks = next;
    if (missing > 0) {
      tasks = { need: { ...need, quantity: missing }, into, latestDay: day - 1, next: tasks };
    }
    for (const input of [...inputs].reverse()) {
      tasks = { need: input, into: slice.taken, latestDay: Infinity, next: tasks };
    }
    if (solve(tasks)) return true;
    board.rollBack(mark);
    return false;
  };

  let tasks: Task | undefined;
  for (const { need, into } of [...needs].reverse()) {
    tasks = { need, into, latestDay: Infinity, next: tasks };
  }
  return solve(tasks);
};
