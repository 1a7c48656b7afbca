import { Prisma } from '../../generated/prisma/client';

/** Columns of the register, as its header prints them: plain, and each of one kind to sort by. */
export const LOT_COLUMNS = [
  'lot_code',
  'item',
  'kind',
  'unit',
  'origin',
  'batch_code',
  'supplier',
  'supplier_lot_code',
  'made_on',
  'best_before',
  'use_by',
  'place',
  'made_quantity',
  'made_mass_grams',
  'on_hand_quantity',
  'on_hand_mass_grams',
  'dispatched_quantity',
  'on_hold',
] as const;

export type LotRegisterRow = Readonly<Record<(typeof LOT_COLUMNS)[number], string>>;

/** Lots in the order of their codes, after one. */
export const lotRegister = (after: string, limit: number): Prisma.Sql => Prisma.sql`
SELECT lot.code AS lot_code, item.name AS item, item.kind, lot.unit,
  CASE WHEN lot.batch_id IS NULL THEN 'received' ELSE 'made' END AS origin,
  coalesce(batch.code, '') AS batch_code, coalesce(supplier.name, '') AS supplier,
  coalesce(line.supplier_lot_code, '') AS supplier_lot_code, lot.made_on::text,
  coalesce(lot.best_before::text, '') AS best_before, coalesce(lot.use_by::text, '') AS use_by,
  coalesce(place.name, '') AS place, lot.made_quantity::text,
  lot.made_mass_g::text AS made_mass_grams, lot.on_hand_quantity::text,
  lot.on_hand_mass_g::text AS on_hand_mass_grams,
  coalesce((SELECT sum(quantity) FROM dispatch_line WHERE lot_id = lot.id), 0)::text
    AS dispatched_quantity,
  CASE WHEN EXISTS (SELECT 1 FROM hold WHERE lot_id = lot.id AND released_at IS NULL)
    THEN 'yes' ELSE 'no' END AS on_hold
FROM lot JOIN item ON item.id = lot.item_id
LEFT JOIN batch ON batch.id = lot.batch_id
LEFT JOIN delivery_line line ON line.id = lot.delivery_line_id
LEFT JOIN delivery ON delivery.id = line.delivery_id
LEFT JOIN supplier ON supplier.id = delivery.supplier_id
LEFT JOIN place ON place.id = lot.place_id
WHERE lot.code > ${after} ORDER BY lot.code LIMIT ${limit}`;
