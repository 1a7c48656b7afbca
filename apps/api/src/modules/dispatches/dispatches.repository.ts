import type { StockShare } from '../../domain/stock';
import { type Decimal, ZERO } from '../../domain/units';
import type { Prisma } from '../../generated/prisma/client';
import { dayFromDb, optionalDayFromDb } from '../../platform/database/days';
import { decimalFromDb, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound } from '../../platform/problems';
import type { CounterSaleView, DispatchLineView, DispatchView } from './dispatches.view';

const included = {
  customer: true,
  lines: { include: { lot: { include: { item: true } } }, orderBy: { position: 'asc' } },
} satisfies Prisma.DispatchInclude;

export type DispatchRow = Prisma.DispatchGetPayload<{ include: typeof included }>;

const NOTHING: StockShare = { quantity: ZERO, massG: ZERO, cost: ZERO };

/** What came back of each line, by line id. */
export const returnedByLine = async (
  tx: Tx,
  lineIds: readonly string[],
): Promise<Map<string, StockShare>> => {
  const returns = await tx.movement.findMany({
    where: { dispatchLineId: { in: [...lineIds] }, kind: 'returned' },
    select: { dispatchLineId: true, quantity: true, massG: true, cost: true },
  });
  const byLine = new Map(lineIds.map((id) => [id, NOTHING]));
  for (const row of returns) {
    const id = row.dispatchLineId ?? '';
    const before = byLine.get(id) ?? NOTHING;
    byLine.set(id, {
      quantity: before.quantity.plus(decimalFromDb(row.quantity)),
      massG: before.massG.plus(decimalFromDb(row.massG)),
      cost: before.cost.plus(decimalFromDb(row.cost)),
    });
  }
  return byLine;
};

const lineView = (line: DispatchRow['lines'][number], returned: Decimal): DispatchLineView => ({
  id: line.id,
  lotCode: line.lot.code,
  itemId: line.lot.itemId,
  itemName: line.lot.item.name,
  unit: line.lot.unit,
  quantity: quantityText(line.quantity),
  massGrams: quantityText(line.massG),
  returnedQuantity: quantityText(returned),
  bestBefore: optionalDayFromDb(line.lot.bestBefore),
  useBy: optionalDayFromDb(line.lot.useBy),
});

export const dispatchViews = async (
  tx: Tx,
  rows: readonly DispatchRow[],
): Promise<DispatchView[]> => {
  const lineIds = rows.flatMap(({ lines }) => lines.map(({ id }) => id));
  const returned = await returnedByLine(tx, lineIds);
  return rows.map((row) => ({
    id: row.id,
    code: row.code,
    customerId: row.customerId,
    customerName: row.customer?.name ?? null,
    sentOn: dayFromDb(row.sentOn),
    note: row.note,
    orderId: row.orderId,
    at: row.at.toISOString(),
    lines: row.lines.map((line) => lineView(line, returned.get(line.id)?.quantity ?? ZERO)),
  }));
};

export const findDispatch = async (tx: Tx, id: string): Promise<DispatchRow> =>
  orNotFound(await tx.dispatch.findUnique({ where: { id }, include: included }), 'dispatch', id);

export const showDispatch = async (tx: Tx, id: string): Promise<DispatchView> => {
  const [view] = await dispatchViews(tx, [await findDispatch(tx, id)]);
  return orNotFound(view, 'dispatch', id);
};

/** Newest first, from the one after the id `after`. */
export const listDispatches = (
  tx: Tx,
  limit: number,
  where: Prisma.DispatchWhereInput,
  after: string | undefined,
): Promise<DispatchRow[]> =>
  tx.dispatch.findMany({
    where: { ...where, ...(after === undefined ? {} : { id: { lt: after } }) },
    include: included,
    orderBy: { id: 'desc' },
    take: limit + 1,
  });

/** Sales over the counter by day and item, less what came back. */
export const counterSales = (tx: Tx, from: string, to: string): Promise<CounterSaleView[]> =>
  tx.$queryRaw<CounterSaleView[]>`
    SELECT dispatch.sent_on::text AS day, item.id AS "itemId", item.name AS "itemName",
      (-sum(movement.quantity))::text AS quantity, (-sum(movement.mass_g))::text AS "massGrams"
    FROM dispatch
    JOIN dispatch_line AS line ON line.dispatch_id = dispatch.id
    JOIN movement ON movement.dispatch_line_id = line.id
      AND movement.kind IN ('dispatched', 'returned')
    JOIN lot ON lot.id = line.lot_id JOIN item ON item.id = lot.item_id
    WHERE dispatch.customer_id IS NULL
      AND dispatch.sent_on BETWEEN ${from}::date AND ${to}::date
    GROUP BY dispatch.sent_on, item.id, item.name ORDER BY dispatch.sent_on, item.name`;
