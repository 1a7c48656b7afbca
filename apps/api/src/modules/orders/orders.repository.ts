import { Decimal } from '../../domain/units';
import type { Prisma } from '../../generated/prisma/client';
import { dayFromDb } from '../../platform/database/days';
import { moneyText, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { newId } from '../../platform/ids/new-id';
import type { OrderLineDto, OrderView } from './orders.dto';

const included = { lines: { orderBy: { position: 'asc' } } } satisfies Prisma.OrderInclude;
export type StoredOrder = Prisma.OrderGetPayload<{ include: typeof included }>;

export const findOrder = (tx: Tx, id: string): Promise<StoredOrder | null> =>
  tx.order.findUnique({ where: { id }, include: included });

export interface OrderFilter {
  readonly state?: string;
  readonly customerId?: string;
  readonly dueBefore?: Date;
}

/** By due day, then by code. */
export const listOrders = (
  tx: Tx,
  filter: OrderFilter,
  take?: number,
  after?: readonly [dueOn: Date, code: string],
): Promise<StoredOrder[]> =>
  tx.order.findMany({
    where: {
      ...(filter.state === undefined ? {} : { state: filter.state }),
      ...(filter.customerId === undefined ? {} : { customerId: filter.customerId }),
      ...(filter.dueBefore === undefined ? {} : { dueOn: { lte: filter.dueBefore } }),
      ...(after === undefined
        ? {}
        : { OR: [{ dueOn: { gt: after[0] } }, { dueOn: after[0], code: { gt: after[1] } }] }),
    },
    orderBy: [{ dueOn: 'asc' }, { code: 'asc' }],
    ...(take === undefined ? {} : { take }),
    include: included,
  });

interface SentRow {
  readonly orderId: string;
  readonly itemId: string;
  readonly quantity: string;
}

/** Quantities that dispatches took for orders, by order and item. */
export const sentOf = async (
  tx: Tx,
  orderIds: readonly string[],
): Promise<ReadonlyMap<string, Decimal>> => {
  const rows = await tx.$queryRaw<SentRow[]>`
    SELECT dispatch.order_id AS "orderId", lot.item_id AS "itemId",
      sum(-movement.quantity)::text AS quantity
    FROM dispatch JOIN dispatch_line line ON line.dispatch_id = dispatch.id
      JOIN movement ON movement.dispatch_line_id = line.id JOIN lot ON lot.id = line.lot_id
    WHERE dispatch.order_id = ANY(${[...orderIds]}::uuid[])
    GROUP BY dispatch.order_id, lot.item_id`;
  return new Map(rows.map((row) => [`${row.orderId}/${row.itemId}`, new Decimal(row.quantity)]));
};

/** Fills the lines of one item in their order with what was sent of it. */
export const sentByLine = (
  order: StoredOrder,
  sent: ReadonlyMap<string, Decimal>,
): ReadonlyMap<string, Decimal> => {
  const left = new Map<string, Decimal>();
  return new Map(
    order.lines.map((line): [string, Decimal] => {
      const key = `${order.id}/${line.itemId}`;
      const there = left.get(key) ?? sent.get(key) ?? new Decimal(0);
      const taken = Decimal.min(there, new Decimal(line.quantity.toString()));
      left.set(key, there.minus(taken));
      return [line.id, taken];
    }),
  );
};

export const orderViews = async (tx: Tx, orders: readonly StoredOrder[]): Promise<OrderView[]> => {
  const itemIds = orders.flatMap(({ lines }) => lines.map(({ itemId }) => itemId));
  const items = await tx.item.findMany({ where: { id: { in: itemIds } } });
  const customerIds = orders.flatMap(({ customerId }) => (customerId === null ? [] : [customerId]));
  const customers = await tx.customer.findMany({ where: { id: { in: customerIds } } });
  const itemName = new Map(items.map(({ id, name }) => [id, name]));
  const customerName = new Map(customers.map(({ id, name }) => [id, name]));
  const sent = await sentOf(
    tx,
    orders.map(({ id }) => id),
  );
  return orders.map((order) => {
    const byLine = sentByLine(order, sent);
    return {
      id: order.id,
      code: order.code,
      customerId: order.customerId,
      customerName: order.customerId === null ? null : (customerName.get(order.customerId) ?? null),
      dueOn: dayFromDb(order.dueOn),
      minimumLifeDays: order.minimumLifeDays,
      state: order.state,
      note: order.note,
      version: order.version,
      lines: order.lines.map((line) => ({
        id: line.id,
        itemId: line.itemId,
        itemName: itemName.get(line.itemId) ?? '',
        quantity: quantityText(line.quantity),
        netPrice: line.netPrice === null ? null : moneyText(line.netPrice),
        sentQuantity: quantityText(byLine.get(line.id) ?? new Decimal(0)),
      })),
    };
  });
};

export const replaceLines = async (
  tx: Tx,
  orderId: string,
  lines: readonly OrderLineDto[],
): Promise<void> => {
  await tx.orderLine.deleteMany({ where: { orderId } });
  await tx.orderLine.createMany({
    data: lines.map((line, index) => ({
      id: newId(),
      orderId,
      position: index + 1,
      itemId: line.itemId,
      quantity: line.quantity,
      netPrice: line.netPrice ?? null,
    })),
  });
};

/** Orders are numbered through; the year in front keeps old ones apart on paper. */
export const nextOrderCode = async (tx: Tx, year: number): Promise<string> => {
  const [row] = await tx.$queryRaw<[{ number: bigint }]>`
    SELECT nextval('order_code_seq') AS number`;
  return `O-${String(year % 100).padStart(2, '0')}-${String(row.number).padStart(4, '0')}`;
};
