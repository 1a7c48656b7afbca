import type { Gs1Facts } from '../../domain/identification';
import type { Item } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import type { Role } from '../../platform/requests/request-context';
import { actionsFor } from './actions';
import { listedLots } from './found-things';
import type { GoodsInView, ScanView } from './scan.dto';
import { say } from '../../domain/words/say';

const itemOf = (tx: Tx, gtin: string | undefined): Promise<Item | null> =>
  gtin === undefined ? Promise.resolve(null) : tx.item.findUnique({ where: { gtin } });

const dayText = (day: Gs1Facts['useBy']): string | null => day?.toString() ?? null;

const goodsIn = (facts: Gs1Facts, gtin: string | undefined, item: Item | null): GoodsInView => ({
  gtin: gtin ?? null,
  itemId: item?.id ?? null,
  itemName: item?.name ?? null,
  supplierLotCode: facts.lotCode ?? null,
  bestBefore: dayText(facts.bestBefore),
  useBy: dayText(facts.useBy),
  producedOn: dayText(facts.producedOn),
  netMassGrams: facts.netMassG?.toFixed(3) ?? null,
  count: facts.count ?? null,
  serial: facts.serial ?? null,
});

const titleOf = (
  item: Item | null,
  gtin: string | undefined,
  lotCode: string | undefined,
): string => {
  const name = item?.name ?? (gtin === undefined ? say`Goods` : say`Goods with the GTIN ${gtin}`);
  return lotCode === undefined ? name : say`${name}, lot ${lotCode}`;
};

/** Lots of the item, or of any item, that came with that supplier's lot code. */
const lotsOf = async (tx: Tx, lotCode: string | undefined, item: Item | null) => {
  if (lotCode === undefined) return [];
  const from = { deliveryLine: { supplierLotCode: lotCode } };
  return listedLots(tx, item === null ? from : { ...from, itemId: item.id });
};

/** A supplier's goods: what the symbol states, and the lots of it that are here already. */
export const foundGoods = async (tx: Tx, facts: Gs1Facts, role: Role): Promise<ScanView> => {
  const gtin = facts.gtin ?? facts.contentGtin;
  const item = await itemOf(tx, gtin);
  const lots = await lotsOf(tx, facts.lotCode, item);
  const isNew = item === null && gtin !== undefined;
  return {
    kind: 'goods',
    code: facts.lotCode ?? null,
    id: item?.id ?? null,
    title: titleOf(item, gtin, facts.lotCode),
    warning: isNew ? say`No item has this GTIN yet. Choose the item at goods in.` : null,
    actions: actionsFor(
      [
        ['receive', null],
        ['recall', lots.length === 0 ? say`No lot of it is on record.` : null],
      ],
      role,
    ),
    lots,
    goodsIn: goodsIn(facts, gtin, item),
  };
};

/** An item by the number of its product: its lots on hand, and goods in. */
export const foundProduct = async (tx: Tx, gtin: string, role: Role): Promise<ScanView> => {
  const item = await itemOf(tx, gtin);
  if (item === null) return foundGoods(tx, { gtin }, role);
  return {
    kind: 'item',
    code: gtin,
    id: item.id,
    title: item.name,
    warning: item.active ? null : say`The item is out of use.`,
    actions: actionsFor(
      [
        ['open', null],
        ...(item.kind === 'ingredient' || item.kind === 'packaging'
          ? [['receive', null] as const]
          : []),
      ],
      role,
    ),
    lots: await listedLots(tx, { itemId: item.id, onHandQuantity: { gt: 0 } }),
    goodsIn: null,
  };
};
