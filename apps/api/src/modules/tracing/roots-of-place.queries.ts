import { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { LOT_STAYS } from './lot-stays.queries';

export interface KeptInWindow {
  readonly ids: readonly string[];
  /** Lots that were in the house then, and nobody recorded where. */
  readonly withoutPlace: number;
}

/**
 * Lots that were in a place at some moment of a window: by their recorded stays, as long as some of
 * the lot was left, and those that were being made there.
 */
export const keptInPlace = async (
  tx: Tx,
  placeId: string,
  from: string,
  to: string,
): Promise<KeptInWindow> => {
  const [row] = await tx.$queryRaw<[{ ids: string[] | null; unplaced: number }]>(Prisma.sql`
    WITH ${LOT_STAYS},
    here AS (
      SELECT stays.lot_id, stays.place_id FROM stays JOIN lot ON lot.id = stays.lot_id
      WHERE (stays.place_id = ${placeId}::uuid OR stays.place_id IS NULL)
        AND stays.came_at <= ${to}::timestamptz
        AND (stays.left_at IS NULL OR stays.left_at >= ${from}::timestamptz)
        AND (lot.on_hand_quantity > 0 OR EXISTS (SELECT 1 FROM movement
          WHERE movement.lot_id = lot.id AND movement.at >= ${from}::timestamptz))),
    found AS (
      SELECT lot_id AS id FROM here WHERE place_id IS NOT NULL
      UNION SELECT lot.id FROM batch
      JOIN lot ON lot.batch_id = batch.id AND lot.taken_back_at IS NULL
      WHERE batch.place_id = ${placeId}::uuid AND batch.opened_at <= ${to}::timestamptz
        AND (batch.ended_at IS NULL OR batch.ended_at >= ${from}::timestamptz))
    SELECT (SELECT array_agg(lot.id ORDER BY lot.code) FROM found JOIN lot USING (id)) AS ids,
      (SELECT count(DISTINCT lot_id)::int FROM here WHERE place_id IS NULL
        AND lot_id NOT IN (SELECT id FROM found)) AS unplaced`);
  return { ids: row.ids ?? [], withoutPlace: row.unplaced };
};

export const readingById = (tx: Tx, id: string) => tx.reading.findUnique({ where: { id } });

/**
 * The nearest readings of the same measure and place that were in limits, before and after; the
 * whole record where there is none. A reading that was put right by another proves nothing.
 */
export const soundReadingsAround = async (
  tx: Tx,
  { placeId, measure, at }: { placeId: string; measure: string; at: Date },
  now: string,
): Promise<{ from: string; to: string }> => {
  const [row] = await tx.$queryRaw<
    [{ before: Date | null; after: Date | null; first: Date | null }]
  >(
    Prisma.sql`
    WITH sound AS (
      SELECT at FROM reading WHERE place_id = ${placeId}::uuid AND measure = ${measure}
        AND verdict = 'in' AND reverses_id IS NULL
        AND NOT EXISTS (SELECT 1 FROM reading undone WHERE undone.reverses_id = reading.id)
        AND NOT EXISTS (SELECT 1 FROM reading_withdrawal WHERE reading_id = reading.id))
    SELECT (SELECT max(at) FROM sound WHERE at < ${at}::timestamptz) AS before,
      (SELECT min(at) FROM sound WHERE at > ${at}::timestamptz) AS after,
      (SELECT min(created_at) FROM lot) AS first`,
  );
  return {
    from: (row.before ?? row.first ?? at).toISOString(),
    to: row.after?.toISOString() ?? now,
  };
};
