import { Temporal } from 'temporal-polyfill';
import type { DatedDraw } from '../../domain/shelf-life';
import type { ItemKind, StockShare } from '../../domain/stock';
import { Decimal, sum } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';

/** What is in a batch of one lot: its draws less what was put back. */
export interface Content extends StockShare, DatedDraw {
  readonly lotId: string;
  readonly itemId: string;
  readonly itemKind: ItemKind;
  /** Reasons of holds placed on it since it was drawn. */
  readonly holds: readonly string[];
}

interface Row {
  readonly lotId: string;
  readonly lotCode: string;
  readonly itemId: string;
  readonly itemName: string;
  readonly itemKind: ItemKind;
  readonly capsDate: boolean;
  readonly bestBefore: string | null;
  readonly useBy: string | null;
  readonly holds: string[];
  readonly quantity: string;
  readonly massG: string;
  readonly cost: string;
}

const day = (text: string | null): Temporal.PlainDate | null =>
  text === null ? null : Temporal.PlainDate.from(text);

/** The lots that are in a batch, in the order in which they were first drawn. One statement. */
export const loadContents = async (tx: Tx, batchId: string): Promise<Content[]> => {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT lot.id AS "lotId", lot.code AS "lotCode", lot.item_id AS "itemId",
      item.name AS "itemName", item.kind AS "itemKind", item.caps_date AS "capsDate",
      lot.best_before::text AS "bestBefore", lot.use_by::text AS "useBy",
      ARRAY(SELECT reason FROM hold WHERE hold.lot_id = lot.id AND released_at IS NULL
        ORDER BY placed_at, hold.id) AS holds,
      inside.quantity::text, inside.mass_g::text AS "massG", inside.cost::text
    FROM (
      SELECT lot_id, sum(quantity) AS quantity, sum(mass_g) AS mass_g, sum(cost) AS cost,
        min(at) AS first_at
      FROM draw WHERE batch_id = ${batchId}::uuid GROUP BY lot_id HAVING sum(quantity) > 0
    ) AS inside
    JOIN lot ON lot.id = inside.lot_id JOIN item ON item.id = lot.item_id
    ORDER BY inside.first_at, lot.code`;
  return rows.map((row) => ({
    ...row,
    bestBefore: day(row.bestBefore),
    useBy: day(row.useBy),
    quantity: new Decimal(row.quantity),
    massG: new Decimal(row.massG),
    cost: new Decimal(row.cost),
  }));
};

export const massOf = (contents: readonly StockShare[]): Decimal =>
  sum(contents.map(({ massG }) => massG));

export const costOf = (contents: readonly StockShare[]): Decimal =>
  sum(contents.map(({ cost }) => cost));

/** Σ losses of a batch, those taken back left out. */
export const lostMass = async (tx: Tx, batchId: string): Promise<Decimal> => {
  const rows = await tx.$queryRaw<{ lost: string }[]>`
    SELECT coalesce(sum(mass_g), 0)::text AS lost FROM batch_loss
    WHERE batch_id = ${batchId}::uuid`;
  return new Decimal(rows[0]?.lost ?? '0');
};
