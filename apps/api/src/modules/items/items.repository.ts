import type { Item, Prisma } from '../../generated/prisma/client';
import { moneyText, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { newId } from '../../platform/ids/new-id';
import type { ItemView } from './items.dto';

export const itemView = (item: Item): ItemView => ({
  id: item.id,
  name: item.name,
  kind: item.kind,
  unit: item.unit,
  perishable: item.perishable,
  capsDate: item.capsDate,
  infusionOnly: item.infusionOnly,
  processingAid: item.processingAid,
  warmestTempC: item.warmestTempC?.toFixed(2) ?? null,
  gtin: item.gtin,
  storageConditions: item.storageConditions,
  nominalMassGrams: item.nominalMassG === null ? null : quantityText(item.nominalMassG),
  vatClass: item.vatClass,
  replacementPrice: item.replacementPrice === null ? null : moneyText(item.replacementPrice),
  note: item.note,
  settings: item.settings as Record<string, unknown>,
  active: item.active,
  version: item.version,
});

export const findItem = (tx: Tx, id: string): Promise<Item | null> =>
  tx.item.findUnique({ where: { id } });

export interface ItemFilter {
  readonly kind: string | undefined;
  readonly name: string | undefined;
  readonly after: string | undefined;
}

export const listItems = (tx: Tx, limit: number, filter: ItemFilter): Promise<Item[]> =>
  tx.item.findMany({
    where: {
      ...(filter.kind === undefined ? {} : { kind: filter.kind }),
      name: {
        ...(filter.after === undefined ? {} : { gt: filter.after }),
        ...(filter.name === undefined ? {} : { contains: filter.name, mode: 'insensitive' }),
      },
    },
    orderBy: { name: 'asc' },
    take: limit + 1,
  });

export const createItem = (
  tx: Tx,
  data: Omit<Prisma.ItemUncheckedCreateInput, 'id'>,
): Promise<Item> => tx.item.create({ data: { id: newId(), ...data } });

export const changeItem = (
  tx: Tx,
  id: string,
  data: Prisma.ItemUncheckedUpdateInput,
): Promise<Item> => tx.item.update({ where: { id }, data: { ...data, version: { increment: 1 } } });
