import { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import type { ReservationView } from './plan.dto';

interface Row extends Omit<ReservationView, 'expiresAt'> {
  readonly expiresAt: Date;
}

/** Reservations with what has become of them, the next to run out first. */
export const findReservations = async (
  tx: Tx,
  at: Date,
  filter: { readonly ids?: readonly string[]; readonly active?: boolean },
): Promise<ReservationView[]> => {
  const ids = filter.ids === undefined ? null : [...filter.ids];
  const rows = await tx.$queryRaw<Row[]>`
    SELECT * FROM (
      SELECT r.id, lot.code AS "lotCode", item.name AS "itemName", batch.code AS "batchCode",
        r.quantity::text AS quantity, r.expires_at AS "expiresAt",
        CASE WHEN r.released_at IS NOT NULL THEN 'released'
          WHEN batch.state <> 'open' THEN 'batch_closed'
          WHEN r.expires_at <= ${at}::timestamptz THEN 'expired' ELSE 'active' END AS state
      FROM reservation r JOIN lot ON lot.id = r.lot_id JOIN item ON item.id = lot.item_id
        JOIN batch ON batch.id = r.batch_id
      WHERE ${ids}::uuid[] IS NULL OR r.id = ANY(${ids}::uuid[])) all_of_them
    WHERE NOT ${filter.active ?? false} OR state = 'active'
    ORDER BY "expiresAt", id`;
  return rows.map((row) => ({ ...row, expiresAt: row.expiresAt.toISOString() }));
};

/** What other open batches keep of a lot. */
export const reservedOf = async (
  tx: Tx,
  lotId: string,
  forBatch: string,
  at: Date,
): Promise<Decimal> => {
  const [row] = await tx.$queryRaw<[{ reserved: string }]>`
    SELECT reserved_of_lot(${lotId}::uuid, ${forBatch}::uuid, ${at}::timestamptz)::text AS reserved`;
  return new Decimal(row.reserved);
};
