import {
  type BatchToFill,
  type BegunBatch,
  lackingOf,
  type PlanRecipe,
} from '../../domain/planning';
import { Decimal } from '../../domain/units';
import { Temporal } from 'temporal-polyfill';
import type { Tx } from '../../platform/database/prisma';
import { readPlan } from '../batches';
import type { NamedDemand } from './demands.queries';
import { PEOPLE } from './planned-recipe';

interface QuantityRow {
  readonly batchId: string;
  readonly itemId: string;
  readonly quantity: string;
}

/** Of one batch, by item. */
const quantitiesOf = (rows: readonly QuantityRow[], batch: string): ReadonlyMap<string, Decimal> =>
  new Map(
    rows
      .filter(({ batchId }) => batchId === batch)
      .map(({ itemId, quantity }) => [itemId, new Decimal(quantity)]),
  );

const drawnInto = (tx: Tx, ids: readonly string[]): Promise<QuantityRow[]> =>
  tx.$queryRaw<QuantityRow[]>`
    SELECT draw.batch_id AS "batchId", lot.item_id AS "itemId", sum(draw.quantity)::text AS quantity
    FROM draw JOIN lot ON lot.id = draw.lot_id WHERE draw.batch_id = ANY(${[...ids]}::uuid[])
    GROUP BY draw.batch_id, lot.item_id`;

/** What is kept for batches and was drawn neither into them nor into their parts. */
const keptFor = (tx: Tx, ids: readonly string[], at: Date): Promise<QuantityRow[]> =>
  tx.$queryRaw<QuantityRow[]>`
    SELECT kept.batch_id AS "batchId", lot.item_id AS "itemId", sum(kept.quantity)::text AS quantity
    FROM (SELECT DISTINCT lot_id FROM reservation WHERE batch_id = ANY(${[...ids]}::uuid[])) reserved
      JOIN lot ON lot.id = reserved.lot_id
      CROSS JOIN LATERAL kept_of_lot(lot.id, ${at}::timestamptz) kept
    WHERE kept.batch_id = ANY(${[...ids]}::uuid[])
    GROUP BY kept.batch_id, lot.item_id`;

export interface LoadedBegun {
  readonly begun: readonly BegunBatch[];
  /** What open batches still lack: it has to come from somewhere before anything new does. */
  readonly lacking: readonly NamedDemand[];
}

/**
 * Open batches with a plan: what they will give, the minutes and moulds they take up today, and
 * what they still lack. An abandoned batch isn't among them, so its goods are planned anew.
 */
export const loadBegun = async (
  tx: Tx,
  recipes: ReadonlyMap<string, PlanRecipe>,
  today: string,
  at: Date,
): Promise<LoadedBegun> => {
  const rows = await tx.batch.findMany({
    where: { state: 'open', kind: { in: ['cook', 'cast', 'pack'] } },
    include: { recipeVersion: { include: { recipe: true } } },
    orderBy: [{ openedAt: 'asc' }, { id: 'asc' }],
  });
  const ids = rows.map(({ id }) => id);
  const drawn = await drawnInto(tx, ids);
  const kept = await keptFor(tx, ids, at);
  const begun: BegunBatch[] = [];
  const makings = new Map<string, BatchToFill[]>();
  for (const row of rows) {
    const item = row.recipeVersion?.recipe.itemId;
    const recipe = item === undefined ? undefined : recipes.get(item);
    const { quantity, trays, lines } = readPlan(row.plan);
    if (item === undefined || recipe === undefined || quantity === null) continue;
    begun.push(begunOf(row.id, item, recipe, new Decimal(quantity), trays, today));
    const head = row.partOfId ?? row.id;
    const toFill: BatchToFill = {
      batch: row.code,
      lines: lines.map((line) => ({ item: line.itemId, quantity: new Decimal(line.quantity) })),
      drawn: quantitiesOf(drawn, row.id),
    };
    makings.set(head, [...(makings.get(head) ?? []), toFill]);
  }
  const lacking = [...makings].flatMap(([head, batches]) =>
    lackingOf(batches, quantitiesOf(kept, head)).map((lack): NamedDemand => ({
      id: `batch:${lack.batch}:${lack.item}`,
      label: lack.batch,
      item: lack.item,
      quantity: lack.quantity,
      dueDay: today,
      minLifeDays: 0,
    })),
  );
  return { begun, lacking };
};

const begunOf = (
  batch: string,
  item: string,
  recipe: PlanRecipe,
  quantity: Decimal,
  trays: number | null,
  today: string,
): BegunBatch => {
  const first = Temporal.PlainDate.from(today);
  const plus = (days: number): string => first.add({ days }).toString();
  const people = recipe.uses.find(({ resource }) => resource === PEOPLE);
  const minutes = quantity.dividedBy(recipe.goodRatio).times(people?.minutesPerUnit ?? 0);
  const { tray } = recipe;
  return {
    batch,
    item,
    quantity,
    readyDay: plus(recipe.restDays),
    busy: [{ resource: PEOPLE, day: today, minutes: minutes.toNumber() }],
    ...(recipe.lifeDays === undefined ? {} : { lastDay: plus(recipe.lifeDays) }),
    ...(tray && trays !== null
      ? { moulds: { design: tray.design, count: trays, untilDay: plus(tray.occupiedDays - 1) } }
      : {}),
  };
};
