import { Temporal } from 'temporal-polyfill';
import type { ItemKind, LotOnHand, LotStanding, StockUnit } from '../../domain/stock';
import { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound } from '../../platform/problems';

/** A lot with all that decides whether and how much of it may be used. */
export interface LotForUse extends LotStanding, LotOnHand {
  readonly id: string;
  readonly itemId: string;
  readonly capsDate: boolean;
  readonly bestBefore: Temporal.PlainDate | null;
}

interface Row {
  readonly id: string;
  readonly code: string;
  readonly itemId: string;
  readonly itemName: string;
  readonly itemKind: ItemKind;
  readonly unit: StockUnit;
  readonly capsDate: boolean;
  readonly refused: boolean;
  readonly specified: boolean;
  readonly bestBefore: string | null;
  readonly useBy: string | null;
  readonly quantity: string;
  readonly massG: string;
  readonly cost: string;
  readonly holds: string[];
}

const day = (text: string | null): Temporal.PlainDate | null =>
  text === null ? null : Temporal.PlainDate.from(text);

const lotOf = (row: Row): LotForUse => ({
  id: row.id,
  code: row.code,
  itemId: row.itemId,
  itemName: row.itemName,
  itemKind: row.itemKind,
  unit: row.unit,
  capsDate: row.capsDate,
  refused: row.refused,
  specified: row.specified,
  bestBefore: day(row.bestBefore),
  useBy: day(row.useBy),
  holds: row.holds,
  onHand: {
    quantity: new Decimal(row.quantity),
    massG: new Decimal(row.massG),
    cost: new Decimal(row.cost),
  },
});

/** Lots by code or by id, in no order; those that aren't there are left out. One statement. */
const loadLots = async (tx: Tx, codes: readonly string[], ids: readonly string[]) => {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT lot.id, lot.code, lot.item_id AS "itemId", item.name AS "itemName",
      item.kind AS "itemKind", lot.unit, item.caps_date AS "capsDate", lot.refused,
      (lot.specification_id IS NOT NULL OR lot.batch_id IS NOT NULL) AS specified,
      lot.best_before::text AS "bestBefore", lot.use_by::text AS "useBy",
      lot.on_hand_quantity::text AS quantity, lot.on_hand_mass_g::text AS "massG",
      lot.on_hand_cost::text AS cost,
      ARRAY(SELECT reason FROM hold WHERE hold.lot_id = lot.id AND released_at IS NULL
        ORDER BY placed_at, hold.id) AS holds
    FROM lot JOIN item ON item.id = lot.item_id
    WHERE lot.code = ANY(${[...codes]}::text[]) OR lot.id = ANY(${[...ids]}::uuid[])`;
  return rows.map(lotOf);
};

export const loadLotsForUse = async (
  tx: Tx,
  codes: readonly string[],
): Promise<ReadonlyMap<string, LotForUse>> => {
  const lots = await loadLots(tx, codes, []);
  return new Map(lots.map((lot) => [lot.code, lot]));
};

/** @throws RefusalError not-found */
export const loadLotForUse = async (tx: Tx, code: string): Promise<LotForUse> => {
  const [lot] = await loadLots(tx, [code], []);
  return orNotFound(lot, 'lot', code);
};

export const loadLotForUseById = async (tx: Tx, id: string): Promise<LotForUse> => {
  const [lot] = await loadLots(tx, [], [id]);
  return orNotFound(lot, 'lot', id);
};
