import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import type { Role } from '../../platform/requests/request-context';
import { actionsFor } from './actions';
import type { ScannedLotView, ScanView } from './scan.dto';
import { byKind, type Finder } from './thing-finders';

export type ThingKind = Exclude<ScanView['kind'], 'lot' | 'goods' | 'item' | 'unknown'>;

const asListed = {
  item: true,
  place: true,
  holds: { where: { releasedAt: null }, select: { id: true } },
} as const satisfies Prisma.LotInclude;

const MOST_LOTS = 100;

/** Lots with something on hand, for the list under what was scanned. */
export const listedLots = async (
  tx: Tx,
  where: Prisma.LotWhereInput,
): Promise<ScannedLotView[]> => {
  const lots = await tx.lot.findMany({
    where,
    include: asListed,
    orderBy: { id: 'desc' },
    take: MOST_LOTS,
  });
  return lots.map((lot) => ({
    code: lot.code,
    itemName: lot.item.name,
    onHandQuantity: lot.onHandQuantity.toFixed(3),
    unit: lot.unit,
    placeName: lot.place?.name ?? null,
    onHold: lot.holds.length > 0,
  }));
};

const FINDERS: Readonly<Record<ThingKind, Finder>> = byKind;

/** A thing by its tag or code, with what can be done with it now; undefined when there is none. */
export const foundThing = async (
  tx: Tx,
  kind: ThingKind,
  code: string,
  role: Role,
): Promise<ScanView | undefined> => {
  const thing = await FINDERS[kind](tx, code);
  if (thing === undefined) return undefined;
  return {
    kind,
    code,
    id: thing.id,
    title: thing.title,
    warning: thing.warning ?? null,
    actions: actionsFor(thing.wanted, role),
    lots: thing.lots === undefined ? [] : await listedLots(tx, thing.lots),
    goodsIn: null,
  };
};
