import { Prisma } from '../../generated/prisma/client';

/** One recorded fact, with its lots as JSON; ordered by moment and id, which is also the cursor. */
export interface FactRow {
  readonly kind: 'received' | 'made' | 'packed' | 'shipped' | 'destroyed';
  readonly id: string;
  readonly at: Date;
  readonly document: string;
  readonly place: string | null;
  readonly party: string | null;
  readonly batchKind: string | null;
  readonly inputs: readonly LotJson[];
  readonly outputs: readonly LotJson[];
  readonly supplierLot: string | null;
  readonly bestBefore: string | null;
}

export interface LotJson {
  readonly lot: string;
  readonly gtin: string | null;
  readonly quantity: string;
  readonly unit: 'g' | 'pc';
}

const LOT = Prisma.sql`json_build_object('lot', lot.code, 'gtin', item.gtin, 'unit', lot.unit,
  'quantity', `;

/**
 * What happened to goods after a moment and an id, oldest first: receipts, makings, packings,
 * shipments, and what was thrown away, alone or with a batch that was given up. A draw or a waste
 * that an opposite entry took back is not among them.
 */
export const factsAfter = (
  after: { readonly at: Date; readonly id: string },
  until: Date,
  limit: number,
): Prisma.Sql => Prisma.sql`
WITH facts AS (
  SELECT 'received' AS kind, line.id, lot.created_at AS at, delivery.id::text AS document
    FROM delivery_line line JOIN lot ON lot.delivery_line_id = line.id
    JOIN delivery ON delivery.id = line.delivery_id
    WHERE line.accepted AND lot.created_at >= ${after.at} AND lot.created_at < ${until}
  UNION ALL
  SELECT CASE kind WHEN 'pack' THEN 'packed' ELSE 'made' END, id, ended_at, code FROM batch
    WHERE state = 'finished' AND ended_at >= ${after.at} AND ended_at < ${until}
  UNION ALL
  SELECT 'shipped', id, at, code FROM dispatch WHERE at >= ${after.at} AND at < ${until}
  UNION ALL
  SELECT 'destroyed', id, at, id::text FROM movement
    WHERE kind = 'wasted' AND quantity < 0 AND at >= ${after.at} AND at < ${until}
      AND NOT EXISTS (SELECT 1 FROM movement undone WHERE undone.reverses_id = movement.id)
  UNION ALL
  SELECT 'destroyed', id, ended_at, code FROM batch
    WHERE state = 'abandoned' AND ended_at >= ${after.at} AND ended_at < ${until}
      AND (SELECT sum(quantity) FROM draw WHERE batch_id = batch.id) > 0
), page AS (
  SELECT * FROM facts WHERE (at, id) > (${after.at}, ${after.id}::uuid)
  ORDER BY at, id LIMIT ${limit})
SELECT page.kind, page.id, page.at, page.document,
  batch.kind AS "batchKind", place.name AS place,
  coalesce(supplier.name, customer.name) AS party,
  line.supplier_lot_code AS "supplierLot",
  coalesce(line.best_before, (SELECT min(best_before) FROM lot
    WHERE batch_id = batch.id AND taken_back_at IS NULL))::text
    AS "bestBefore",
  coalesce((SELECT json_agg(${LOT} d.quantity::text) ORDER BY lot.code) FROM (
      SELECT lot_id, sum(quantity) AS quantity FROM draw WHERE batch_id = batch.id
      GROUP BY lot_id HAVING sum(quantity) > 0) d
    JOIN lot ON lot.id = d.lot_id JOIN item ON item.id = lot.item_id), '[]') AS inputs,
  coalesce((SELECT json_agg(${LOT} o.quantity::text) ORDER BY lot.code) FROM (
      SELECT id AS lot_id, made_quantity AS quantity FROM lot
        WHERE (lot.batch_id = batch.id AND lot.taken_back_at IS NULL)
          OR lot.delivery_line_id = line.id
      UNION ALL SELECT lot_id, quantity FROM dispatch_line WHERE dispatch_id = dispatch.id
      UNION ALL SELECT lot_id, -quantity FROM movement
        WHERE movement.id = page.id AND page.kind = 'destroyed'
      UNION ALL SELECT lot_id, sum(quantity) FROM draw
        WHERE draw.batch_id = page.id AND page.kind = 'destroyed'
        GROUP BY lot_id HAVING sum(quantity) > 0) o
    JOIN lot ON lot.id = o.lot_id JOIN item ON item.id = lot.item_id), '[]') AS outputs
FROM page
LEFT JOIN batch ON batch.id = page.id AND page.kind IN ('made', 'packed')
LEFT JOIN delivery_line line ON line.id = page.id AND page.kind = 'received'
LEFT JOIN delivery ON delivery.id = line.delivery_id
LEFT JOIN supplier ON supplier.id = delivery.supplier_id
LEFT JOIN dispatch ON dispatch.id = page.id AND page.kind = 'shipped'
LEFT JOIN customer ON customer.id = dispatch.customer_id
LEFT JOIN place ON place.id = coalesce(batch.place_id,
  (SELECT place_id FROM lot WHERE lot.delivery_line_id = line.id))
ORDER BY page.at, page.id`;
