import type { Prisma } from '../../generated/prisma/client';
import { dayFromDb, optionalDayFromDb } from '../../platform/database/days';
import { moneyText, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import type { DeliveryLineView, DeliveryView } from './deliveries.dto';

const withLines = {
  supplier: true,
  lines: {
    orderBy: { position: 'asc' },
    include: { item: true, lot: { include: { holds: { where: { releasedAt: null } } } } },
  },
} as const satisfies Prisma.DeliveryInclude;

export type DeliveryRow = Prisma.DeliveryGetPayload<{ include: typeof withLines }>;
type LineRow = DeliveryRow['lines'][number];

const reasonsOf = (holds: readonly { reason: string }[]): string | null =>
  holds.length === 0 ? null : holds.map((hold) => hold.reason).join(' ');

const lineView = (line: LineRow): DeliveryLineView => ({
  id: line.id,
  itemId: line.itemId,
  itemName: line.item.name,
  unit: line.item.unit,
  lotCode: line.lot?.code ?? '',
  supplierLotCode: line.supplierLotCode,
  bestBefore: optionalDayFromDb(line.bestBefore),
  useBy: optionalDayFromDb(line.useBy),
  quantity: quantityText(line.quantity),
  price: moneyText(line.price),
  tempC: line.tempC?.toFixed(2) ?? null,
  accepted: line.accepted,
  refusalReason: line.refusalReason,
  heldBecause: reasonsOf(line.lot?.holds ?? []),
});

export const deliveryView = (delivery: DeliveryRow): DeliveryView => ({
  id: delivery.id,
  supplierId: delivery.supplierId,
  supplierName: delivery.supplier.name,
  reference: delivery.reference,
  receivedOn: dayFromDb(delivery.receivedOn),
  receivedAt: delivery.receivedAt.toISOString(),
  note: delivery.note,
  lines: delivery.lines.map(lineView),
});

export const findDelivery = (tx: Tx, id: string): Promise<DeliveryRow | null> =>
  tx.delivery.findUnique({ where: { id }, include: withLines });

/** Latest first; ids sort by time, so the id is the cursor. */
export const listDeliveries = (
  tx: Tx,
  limit: number,
  filter: { after: string | undefined; supplierId: string | undefined },
): Promise<DeliveryRow[]> =>
  tx.delivery.findMany({
    where: {
      ...(filter.supplierId === undefined ? {} : { supplierId: filter.supplierId }),
      ...(filter.after === undefined ? {} : { id: { lt: filter.after } }),
    },
    orderBy: { id: 'desc' },
    include: withLines,
    take: limit + 1,
  });

const goodsItem = {
  specifications: {
    where: { state: 'approved' },
    orderBy: { number: 'desc' },
    include: { allergens: { where: { presence: 'unknown' } } },
  },
} as const satisfies Prisma.ItemInclude;

export type GoodsItem = Prisma.ItemGetPayload<{ include: typeof goodsItem }>;

/** The items of a delivery with what this supplier has approved specifications for. */
export const findGoodsItems = async (
  tx: Tx,
  itemIds: readonly string[],
  supplierId: string,
): Promise<Map<string, GoodsItem>> => {
  const items = await tx.item.findMany({
    where: { id: { in: [...new Set(itemIds)] } },
    include: {
      specifications: {
        ...goodsItem.specifications,
        where: { state: 'approved', supplierId },
      },
    },
  });
  return new Map(items.map((item) => [item.id, item]));
};
