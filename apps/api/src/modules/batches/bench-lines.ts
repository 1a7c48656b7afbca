import { sum } from '../../domain/units';
import { decimalFromDb, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import type { BatchLineView, ProposedLotView } from './output.view';
import { readPlan } from './open-batch';
import type { WholeBatch } from './whole-batch';

interface UsableLotRow {
  readonly itemId: string;
  readonly code: string;
  readonly onHand: string;
  readonly date: string | null;
  readonly tankName: string | null;
}

/** Lots of one item that are proposed; more are found under the item's stock. */
const MOST_PROPOSED = 5;

/** Lots that may be used today, by item, first expired first. */
const usableLots = (tx: Tx, itemIds: readonly string[], today: string): Promise<UsableLotRow[]> =>
  tx.$queryRaw<UsableLotRow[]>`
    SELECT "itemId", code, "onHand", date::text, "tankName" FROM (
      SELECT lot.item_id AS "itemId", lot.code, lot.on_hand_quantity::text AS "onHand",
        least(lot.use_by, lot.best_before) AS date, tank.name AS "tankName",
        row_number() OVER (PARTITION BY lot.item_id
          ORDER BY least(lot.use_by, lot.best_before) NULLS LAST, lot.code) AS place
      FROM lot JOIN item ON item.id = lot.item_id LEFT JOIN tank ON tank.current_lot_id = lot.id
      WHERE lot.item_id = ANY(${[...itemIds]}::uuid[]) AND lot.on_hand_quantity > 0
        AND NOT lot.refused AND (lot.use_by IS NULL OR lot.use_by >= ${today}::date)
        AND (item.kind <> 'ingredient' OR lot.specification_id IS NOT NULL
          OR lot.batch_id IS NOT NULL)
        AND NOT EXISTS (SELECT 1 FROM hold WHERE hold.lot_id = lot.id AND released_at IS NULL)
    ) AS usable WHERE place <= ${MOST_PROPOSED} ORDER BY place`;

const proposedView = (row: UsableLotRow): ProposedLotView => ({
  lotCode: row.code,
  onHandQuantity: row.onHand,
  date: row.date,
  tankName: row.tankName,
});

/** The plan's lines with what was drawn for each, and lots to take for what is open. */
export const linesOf = async (
  tx: Tx,
  batch: WholeBatch,
  today: string,
): Promise<BatchLineView[]> => {
  const { lines } = readPlan(batch.plan);
  const itemIds = [...new Set(lines.map(({ itemId }) => itemId))];
  if (itemIds.length === 0) return [];
  const items = await tx.item.findMany({ where: { id: { in: itemIds } } });
  const byId = new Map(items.map((item) => [item.id, item]));
  const lots = batch.state === 'open' ? await usableLots(tx, itemIds, today) : [];
  return lines.map((line) => {
    const item = byId.get(line.itemId);
    const drawn = batch.draws.filter(
      (draw) => draw.lot.itemId === line.itemId && draw.role === line.role,
    );
    return {
      itemId: line.itemId,
      itemName: item?.name ?? '',
      role: line.role,
      unit: item?.unit ?? 'g',
      plannedQuantity: line.quantity,
      drawnQuantity: quantityText(sum(drawn.map(({ quantity }) => decimalFromDb(quantity)))),
      proposedLots: lots.filter(({ itemId }) => itemId === line.itemId).map(proposedView),
    };
  });
};
