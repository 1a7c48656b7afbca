import type { StockLot } from '../../domain/stock-value';
import type { Purchase } from '../../domain/stock-value';
import { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';

export interface LotInStock extends StockLot {
  readonly code: string;
  readonly itemName: string;
  readonly kind: string;
  readonly unit: string;
  readonly reserved: Decimal;
}

interface StockRow {
  readonly id: string;
  readonly code: string;
  readonly itemId: string;
  readonly itemName: string;
  readonly kind: string;
  readonly unit: string;
  readonly quantity: string;
  readonly value: string;
  readonly lastDay: string | null;
  readonly since: string;
  readonly lastTaken: string | null;
  readonly held: boolean;
  readonly reserved: string;
}

/** Lots with something on hand. Refused lots never have any. */
export const loadStock = async (tx: Tx, at: Date, kind: string | null): Promise<LotInStock[]> => {
  const rows = await tx.$queryRaw<StockRow[]>`
    SELECT lot.id, lot.code, item.id AS "itemId", item.name AS "itemName", item.kind, lot.unit,
      lot.on_hand_quantity::text AS quantity, lot.on_hand_cost::text AS value,
      coalesce(lot.use_by, lot.best_before)::text AS "lastDay", lot.made_on::text AS since,
      (SELECT max(workshop_day(movement.at))::text FROM movement
        WHERE movement.lot_id = lot.id AND movement.reverses_id IS NULL
          AND movement.kind IN ('drawn', 'dispatched', 'sampled')) AS "lastTaken",
      EXISTS (SELECT 1 FROM hold WHERE hold.lot_id = lot.id AND released_at IS NULL) AS held,
      reserved_of_lot(lot.id, NULL, ${at}::timestamptz)::text AS reserved
    FROM lot JOIN item ON item.id = lot.item_id
    WHERE lot.on_hand_quantity > 0 AND (${kind}::text IS NULL OR item.kind = ${kind})
    ORDER BY item.name, coalesce(lot.use_by, lot.best_before) NULLS LAST, lot.code`;
  return rows.map((row) => ({
    lot: row.id,
    code: row.code,
    item: row.itemId,
    itemName: row.itemName,
    kind: row.kind,
    unit: row.unit,
    quantity: new Decimal(row.quantity),
    value: new Decimal(row.value),
    since: row.since,
    held: row.held,
    reserved: new Decimal(row.reserved),
    ...(row.lastDay === null ? {} : { lastDay: row.lastDay }),
    ...(row.lastTaken === null ? {} : { lastTaken: row.lastTaken }),
  }));
};

interface PurchaseRow {
  readonly item: string;
  readonly supplier: string;
  readonly day: string;
  readonly quantity: string;
  readonly price: string;
  readonly unit: 'g' | 'pc';
}

export const loadPurchases = async (tx: Tx, itemId: string): Promise<Purchase[]> => {
  const rows = await tx.$queryRaw<PurchaseRow[]>`
    SELECT item.id AS item, supplier.name AS supplier, delivery.received_on::text AS day,
      line.quantity::text, line.price::text, item.unit
    FROM delivery_line line JOIN delivery ON delivery.id = line.delivery_id
      JOIN supplier ON supplier.id = delivery.supplier_id JOIN item ON item.id = line.item_id
    WHERE line.accepted AND item.id = ${itemId}::uuid
    ORDER BY delivery.received_on, delivery.received_at, line.position`;
  return rows.map((row) => ({
    ...row,
    quantity: new Decimal(row.quantity),
    price: new Decimal(row.price),
  }));
};
