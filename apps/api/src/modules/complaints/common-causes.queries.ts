import { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { LOT_STAYS } from '../tracing';

export interface ComparableLot {
  readonly id: string;
  readonly code: string;
  /** Units that went out. */
  readonly sent: string;
}

export interface MouldOfBatch {
  readonly batchId: string;
  readonly tag: string;
}

/**
 * What the complained lots are compared with: lots of the same kinds of thing (boxes, pieces) made
 * within thirty days of any of them and sent out, and the complained lots themselves.
 */
export const comparableLots = (tx: Tx, lotIds: readonly string[]): Promise<ComparableLot[]> =>
  tx.$queryRaw<ComparableLot[]>`
    WITH asked AS (
      SELECT lot.id, lot.made_on, item.kind FROM lot JOIN item ON item.id = lot.item_id
      WHERE lot.id = ANY(${[...lotIds]}::uuid[])),
    span AS (SELECT min(made_on) - 30 AS first, max(made_on) + 30 AS last FROM asked)
    SELECT lot.id, lot.code, coalesce(sum(line.quantity), 0)::text AS sent
    FROM lot JOIN item ON item.id = lot.item_id
    CROSS JOIN span
    LEFT JOIN dispatch_line line ON line.lot_id = lot.id
    WHERE lot.id IN (SELECT id FROM asked)
      OR (item.kind IN (SELECT kind FROM asked) AND lot.made_on BETWEEN span.first AND span.last)
    GROUP BY lot.id, lot.code
    HAVING count(line.id) > 0 OR lot.id IN (SELECT id FROM asked)
    ORDER BY lot.code`;

export const mouldsOfBatches = (tx: Tx, batchIds: readonly string[]): Promise<MouldOfBatch[]> =>
  tx.$queryRaw<MouldOfBatch[]>`
    SELECT DISTINCT use.batch_id AS "batchId", mould.tag FROM mould_use use
    JOIN mould ON mould.id = use.mould_id
    WHERE use.batch_id = ANY(${[...batchIds]}::uuid[])
      AND NOT EXISTS (SELECT 1 FROM mould_use_withdrawal WHERE mould_use_id = use.id)`;

export interface PlaceOfLot {
  readonly lotId: string;
  readonly placeId: string;
}

/** Every place where each lot ever stood: a fridge counts also when the lot has left it. */
export const placesOfLots = (tx: Tx, lotIds: readonly string[]): Promise<PlaceOfLot[]> =>
  tx.$queryRaw<PlaceOfLot[]>(Prisma.sql`
    WITH ${LOT_STAYS}
    SELECT DISTINCT lot_id AS "lotId", place_id AS "placeId" FROM stays
    WHERE lot_id = ANY(${[...lotIds]}::uuid[]) AND place_id IS NOT NULL`);

const names = (rows: readonly { id: string; name: string }[]): Map<string, string> =>
  new Map(rows.map((row) => [row.id, row.name]));

const named = { select: { id: true, name: true } } as const;

export const allNames = async (tx: Tx) => ({
  people: names(await tx.user.findMany(named)),
  tanks: names(await tx.tank.findMany(named)),
  places: names(await tx.place.findMany(named)),
});

export const itemNamesOf = async (tx: Tx, codes: readonly string[]) => {
  const lots = await tx.lot.findMany({
    where: { code: { in: [...codes] } },
    select: { code: true, item: { select: { name: true } } },
  });
  return new Map(lots.map((lot) => [lot.code, lot.item.name]));
};
