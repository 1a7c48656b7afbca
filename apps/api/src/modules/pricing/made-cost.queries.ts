import {
  madeCosts,
  type LotCost,
  type MadeBatch,
  type MadeOutput,
  type ReceivedLot,
} from '../../domain/costing';
import { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import { orRefuse } from '../../platform/problems';
import { loadWorkshop } from '../workshop';
import { loadRates, overheadOf } from './cost-basis.queries';
import { USUAL_ROLE } from './stored-recipe';

interface LotRow {
  readonly id: string;
  readonly itemId: string;
  readonly batchId: string | null;
  readonly outputRole: string | null;
  readonly quantity: string;
  readonly massG: string;
  readonly cost: string;
}
interface BatchRow {
  readonly id: string;
  readonly code: string;
  readonly day: string;
  readonly kind: string;
  readonly bookedMinutes: string | null;
  readonly plannedMinutes: string | null;
  readonly role: string | null;
}
interface DrawRow {
  readonly batchId: string;
  readonly lot: string;
  readonly role: string;
  readonly quantity: string;
}
interface LossRow {
  readonly batchId: string;
  readonly kind: string;
  readonly massG: string;
}

/** Every lot behind the given ones, each visited once, and with it every lot of its batch. */
const lotsBehind = (tx: Tx, ids: readonly string[]): Promise<LotRow[]> => tx.$queryRaw<LotRow[]>`
  WITH RECURSIVE behind AS (
    SELECT unnest(${[...ids]}::uuid[]) AS id
    UNION
    SELECT draw.lot_id FROM behind JOIN lot ON lot.id = behind.id
      JOIN draw ON draw.batch_id = lot.batch_id
  ), batches AS (
    SELECT DISTINCT lot.batch_id FROM behind JOIN lot ON lot.id = behind.id)
  SELECT lot.id, lot.item_id AS "itemId", lot.batch_id AS "batchId",
    lot.output_role AS "outputRole", lot.made_quantity::text AS quantity,
    lot.made_mass_g::text AS "massG", lot.made_cost::text AS cost
  FROM lot WHERE lot.taken_back_at IS NULL AND (lot.id IN (SELECT id FROM behind)
    OR lot.batch_id IN (SELECT batch_id FROM batches))`;

/** Planned minutes are scaled to what was made; they stand in where nobody booked any. */
const batchesOf = (tx: Tx, ids: readonly string[]): Promise<BatchRow[]> => tx.$queryRaw<BatchRow[]>`
  SELECT batch.id, batch.code, workshop_day(coalesce(batch.ended_at, batch.opened_at))::text AS day,
    batch.kind, batch.labour_minutes::text AS "bookedMinutes", version.labour_role AS role,
    (version.labour_minutes * (SELECT sum(made_quantity) FROM lot
      WHERE lot.batch_id = batch.id AND lot.output_role = 'product' AND lot.taken_back_at IS NULL)
      / coalesce(version.yield_pieces, version.yield_mass_g))::text AS "plannedMinutes"
  FROM batch LEFT JOIN recipe_version version ON version.id = batch.recipe_version_id
  WHERE batch.id = ANY(${[...ids]}::uuid[])
  ORDER BY batch.opened_at, batch.id`;

const drawsOf = (tx: Tx, ids: readonly string[]): Promise<DrawRow[]> => tx.$queryRaw<DrawRow[]>`
  SELECT batch_id AS "batchId", lot_id AS lot, role, sum(quantity)::text AS quantity
  FROM draw WHERE batch_id = ANY(${[...ids]}::uuid[])
  GROUP BY batch_id, lot_id, role HAVING sum(quantity) <> 0`;

const lossesOf = (tx: Tx, ids: readonly string[]): Promise<LossRow[]> => tx.$queryRaw<LossRow[]>`
  SELECT batch_id AS "batchId", kind, sum(mass_g)::text AS "massG"
  FROM batch_loss WHERE batch_id = ANY(${[...ids]}::uuid[]) GROUP BY batch_id, kind`;

const outputOf = (lot: LotRow): MadeOutput => ({
  lot: lot.id,
  quantity: new Decimal(lot.quantity),
  massG: new Decimal(lot.massG),
  role: lot.outputRole === 'rework' ? 'rework' : 'product',
});

const receivedOf = (lot: LotRow): ReceivedLot => ({
  lot: lot.id,
  item: lot.itemId,
  quantity: new Decimal(lot.quantity),
  price: new Decimal(lot.cost),
});

const byKey = <T, K>(rows: readonly T[], keyOf: (row: T) => K): Map<K, T[]> => {
  const groups = new Map<K, T[]>();
  for (const row of rows) {
    const key = keyOf(row);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return groups;
};

export interface LoadedMadeCosts {
  /** By lot id: every lot behind the ones asked for, and they themselves. */
  readonly costs: ReadonlyMap<string, LotCost>;
  /** Codes of batches whose minutes nobody booked, so that planned ones stand in. */
  readonly assumedMinutes: readonly string[];
}

/** What whole lots really cost, from the lots that went into them, however deep. */
export const loadMadeCosts = async (tx: Tx, ids: readonly string[]): Promise<LoadedMadeCosts> => {
  const lots = await lotsBehind(tx, ids);
  const batchIds = [...new Set(lots.flatMap(({ batchId }) => (batchId === null ? [] : [batchId])))];
  const rows = await batchesOf(tx, batchIds);
  const draws = byKey(await drawsOf(tx, batchIds), ({ batchId }) => batchId);
  const losses = byKey(await lossesOf(tx, batchIds), ({ batchId }) => batchId);
  const outputs = byKey(lots, ({ batchId }) => batchId);
  const batches = rows.map((row): MadeBatch => ({
    id: row.id,
    day: row.day,
    makesPieces: row.kind === 'cast',
    draws: (draws.get(row.id) ?? []).map((d) => ({ ...d, quantity: new Decimal(d.quantity) })),
    losses: (losses.get(row.id) ?? []).map((l) => ({ kind: l.kind, massG: new Decimal(l.massG) })),
    outputs: (outputs.get(row.id) ?? []).map(outputOf),
    labour: [
      {
        role: row.role ?? USUAL_ROLE,
        minutes: new Decimal(row.bookedMinutes ?? row.plannedMinutes ?? 0),
      },
    ],
  }));
  const costs = orRefuse(
    madeCosts({
      received: (outputs.get(null) ?? []).map(receivedOf),
      batches,
      rates: await loadRates(tx),
      overhead: overheadOf(await loadWorkshop(tx)),
    }),
  );
  const assumed = rows.filter((row) => row.bookedMinutes === null && row.plannedMinutes !== null);
  return { costs, assumedMinutes: assumed.map(({ code }) => code) };
};
