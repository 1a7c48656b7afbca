import type { Gs1Facts } from '../../domain/identification';
import type { Tx } from '../../platform/database/prisma';
import type { Role } from '../../platform/requests/request-context';
import { actionsFor } from './actions';
import { listedLots } from './found-things';
import type { ScanView } from './scan.dto';

const itemOf = (tx: Tx, gtin: string | undefined) =>
  gtin === undefined ? null : tx.item.findUnique({ where: { gtin } });

/** A supplier's goods: what the symbol states, and the lots of it that are here already. */
export const foundGoods = async (tx: Tx, facts: Gs1Facts, role: Role): Promise<ScanView> => {
  const gtin = facts.gtin ?? facts.contentGtin;
  const item = await itemOf(tx, gtin);
  const lots =
    facts.lotCode === undefined
      ? []
      : await listedLots(tx, {
          deliveryLine: { supplierLotCode: facts.lotCode },
          ...(item === null ? {} : { itemId: item.id }),
        });
  const name = item?.name ?? (gtin === undefined ? 'Goods' : `Goods with the GTIN ${gtin}`);
  return {
    kind: 'goods',
    code: facts.lotCode ?? null,
    id: item?.id ?? null,
    title: facts.lotCode === undefined ? name : `${name}, lot ${facts.lotCode}`,
    warning:
      item === null && gtin !== undefined
        ? 'No item has this GTIN yet. Choose the item at goods in.'
        : null,
    actions: actionsFor(
      [
        ['receive', null],
        ['recall', lots.length === 0 ? 'No lot of it is on record.' : null],
      ],
      role,
    ),
    lots,
    goodsIn: {
      gtin: gtin ?? null,
      itemId: item?.id ?? null,
      itemName: item?.name ?? null,
      supplierLotCode: facts.lotCode ?? null,
      bestBefore: facts.bestBefore?.toString() ?? null,
      useBy: facts.useBy?.toString() ?? null,
      producedOn: facts.producedOn?.toString() ?? null,
      netMassGrams: facts.netMassG?.toFixed(3) ?? null,
      count: facts.count ?? null,
      serial: facts.serial ?? null,
    },
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
    warning: item.active ? null : 'The item is out of use.',
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
