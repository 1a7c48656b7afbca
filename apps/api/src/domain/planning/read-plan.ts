import type { Board } from './board';
import type { Slice, Taken } from './makings';
import type { Plan, PlannedBatch, PlannedUse, Purchase, Shortfall, Source } from './planned';
import { fromThousandths } from './sizes';

/** Reads the board out: slices of one item and day become one batch, purchases one line a day. */
export const readPlan = (
  board: Board,
  served: ReadonlyMap<string, readonly Taken[]>,
  shortfalls: readonly Shortfall[],
): Plan => {
  const groups = batchesOf(board);
  const idOf = new Map(
    [...groups].flatMap(([id, slices]) => slices.map((slice): [Slice, string] => [slice, id])),
  );
  // What needs something is begun before it, so the reverse has what is needed first.
  const batches = [...groups].reverse().map(([id, slices]) => batchOf(id, slices, board, idOf));
  const order = { cook: 0, cast: 1, pack: 2 };
  batches.sort(
    (a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0) || order[a.step] - order[b.step],
  );
  return {
    batches,
    purchases: purchasesOf(board),
    served: [...served].map(([demand, taken]) => ({ demand, uses: usesOf(taken, idOf) })),
    shortfalls,
  };
};

type Named = ReadonlyMap<Slice, string>;

const batchesOf = (board: Board): Map<string, Slice[]> => {
  const groups = new Map<string, Slice[]>();
  const lives = new Map<string, number[]>();
  for (const slice of board.slices) {
    const name = `${slice.item}@${board.days.dayAt(slice.day)}`;
    const known = lives.get(name) ?? [];
    if (!known.includes(slice.lastDay)) lives.set(name, [...known, slice.lastDay]);
    const place = (lives.get(name) ?? []).indexOf(slice.lastDay);
    const id = place === 0 ? name : `${name}/${place + 1}`;
    groups.set(id, [...(groups.get(id) ?? []), slice]);
  }
  return groups;
};

const batchOf = (id: string, slices: readonly Slice[], board: Board, idOf: Named): PlannedBatch => {
  const [first] = slices;
  const made = first && board.madeItem(first.item);
  if (!first || !made) throw new Error(`batch ${id} has no making`);
  const { recipe, sizes } = made;
  const count = slices.reduce((total, slice) => total + slice.count, 0);
  const good = slices.reduce((total, slice) => total + slice.good, 0);
  return {
    id,
    item: first.item,
    step: recipe.step,
    day: board.days.dayAt(first.day),
    latestDay: board.days.dayAt(Math.min(...slices.map(({ latestDay }) => latestDay))),
    readyDay: board.days.dayAt(first.readyDay),
    quantity: fromThousandths(good),
    trays: recipe.tray ? count : undefined,
    design: recipe.tray?.design,
    minutes: recipe.uses.map(({ resource, minutesFixed, minutesPerUnit }) => ({
      resource,
      // The fixed minutes of a day stand with its first batch of the item.
      minutes: (id.includes('/') ? 0 : minutesFixed) + minutesPerUnit * sizes.unitsPerCount * count,
    })),
    uses: usesOf(
      slices.flatMap(({ taken }) => taken),
      idOf,
    ),
    demands: [...new Set(slices.map(({ demand }) => demand))],
  };
};

const usesOf = (taken: readonly Taken[], idOf: Named): PlannedUse[] => {
  const uses = new Map<string, { item: string; source: Source; quantity: number }>();
  for (const { item, from, quantity } of taken) {
    const source = sourceOf(from, idOf);
    const key = JSON.stringify([item, source]);
    uses.set(key, { item, source, quantity: quantity + (uses.get(key)?.quantity ?? 0) });
  }
  return [...uses.values()].map((use) => ({ ...use, quantity: fromThousandths(use.quantity) }));
};

const sourceOf = (from: Taken['from'], idOf: Named): Source => {
  if (from === 'bought') return { kind: 'bought' };
  if ('lot' in from) return { kind: 'lot', lot: from.lot };
  if ('batch' in from) return { kind: 'begun', batch: from.batch };
  return { kind: 'planned', batch: idOf.get(from.slice) ?? '' };
};

const purchasesOf = (board: Board): Purchase[] => {
  const sums = new Map<string, { item: string; byDay: number; quantity: number }>();
  for (const { item, byDay, quantity } of board.bought) {
    const key = `${item}@${byDay}`;
    sums.set(key, { item, byDay, quantity: quantity + (sums.get(key)?.quantity ?? 0) });
  }
  return [...sums.values()]
    .sort((a, b) => a.byDay - b.byDay || (a.item < b.item ? -1 : 1))
    .map(({ item, byDay, quantity }) => ({
      item,
      quantity: fromThousandths(quantity),
      neededOn: board.days.dayAt(byDay),
    }));
};
