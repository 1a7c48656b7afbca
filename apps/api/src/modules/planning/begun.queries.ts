import type { BegunBatch, PlanRecipe } from '../../domain/planning';
import { Decimal } from '../../domain/units';
import { Temporal } from 'temporal-polyfill';
import type { Tx } from '../../platform/database/prisma';
import { readPlan } from '../batches';
import type { NamedDemand } from './demands.queries';
import { PEOPLE } from './planned-recipe';

interface TakenRow {
  readonly batchId: string;
  readonly itemId: string;
  readonly quantity: string;
}

/** What open batches drew of each item, and what they keep reserved beyond that. */
const takenByBatches = (tx: Tx, ids: readonly string[], at: Date): Promise<TakenRow[]> =>
  tx.$queryRaw<TakenRow[]>`
    SELECT "batchId", "itemId", sum(quantity)::text AS quantity FROM (
      SELECT coalesce(d.batch_id, r.batch_id) AS "batchId", lot.item_id AS "itemId",
        greatest(coalesce(d.quantity, 0), coalesce(r.quantity, 0)) AS quantity
      FROM (SELECT batch_id, lot_id, sum(quantity) AS quantity FROM draw
          WHERE batch_id = ANY(${[...ids]}::uuid[]) GROUP BY batch_id, lot_id) d
        FULL JOIN (SELECT batch_id, lot_id, sum(quantity) AS quantity FROM reservation
          WHERE batch_id = ANY(${[...ids]}::uuid[]) AND released_at IS NULL
            AND expires_at > ${at}::timestamptz GROUP BY batch_id, lot_id) r
          ON r.batch_id = d.batch_id AND r.lot_id = d.lot_id
        JOIN lot ON lot.id = coalesce(d.lot_id, r.lot_id)) taken
    GROUP BY "batchId", "itemId"`;

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
    orderBy: { openedAt: 'asc' },
  });
  const taken = await takenByBatches(
    tx,
    rows.map(({ id }) => id),
    at,
  );
  const begun: BegunBatch[] = [];
  const lacking: NamedDemand[] = [];
  for (const row of rows) {
    const item = row.recipeVersion?.recipe.itemId;
    const recipe = item === undefined ? undefined : recipes.get(item);
    const { quantity, trays, lines } = readPlan(row.plan);
    if (item === undefined || recipe === undefined || quantity === null) continue;
    begun.push(begunOf(row.id, item, recipe, new Decimal(quantity), trays, today));
    for (const line of lines) {
      const had = taken.find((t) => t.batchId === row.id && t.itemId === line.itemId)?.quantity;
      const missing = new Decimal(line.quantity).minus(had ?? 0);
      if (!missing.greaterThan(0)) continue;
      lacking.push({
        id: `batch:${row.code}:${line.itemId}:${line.role}`,
        label: row.code,
        item: line.itemId,
        quantity: missing,
        dueDay: today,
        minLifeDays: 0,
      });
    }
  }
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
