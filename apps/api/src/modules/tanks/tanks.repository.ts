import type { Prisma } from '../../generated/prisma/client';
import { optionalDayFromDb } from '../../platform/database/days';
import { quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound } from '../../platform/problems';
import type { TankView } from './tanks.view';

const included = {
  item: true,
  emptyings: { where: { cleaned: true }, orderBy: { at: 'desc' }, take: 1 },
} satisfies Prisma.TankInclude;

export type TankRow = Prisma.TankGetPayload<{ include: typeof included }>;

const lotIncluded = { holds: { where: { releasedAt: null } } } satisfies Prisma.LotInclude;
type LotRow = Prisma.LotGetPayload<{ include: typeof lotIncluded }>;

const view = (tank: TankRow, lot: LotRow | undefined): TankView => ({
  id: tank.id,
  name: tank.name,
  tag: tank.tag,
  itemId: tank.itemId,
  itemName: tank.item.name,
  capacityGrams: quantityText(tank.capacityG),
  currentLot:
    lot === undefined
      ? null
      : {
          lotCode: lot.code,
          onHandGrams: quantityText(lot.onHandMassG),
          bestBefore: optionalDayFromDb(lot.bestBefore),
          useBy: optionalDayFromDb(lot.useBy),
          held: lot.holds.length > 0,
        },
  cleanSince: tank.emptyings[0]?.at.toISOString() ?? null,
  active: tank.active,
  version: tank.version,
});

/** Views of tanks, each with the lot that is in it. */
export const tankViews = async (tx: Tx, tanks: readonly TankRow[]): Promise<TankView[]> => {
  const ids = tanks.flatMap(({ currentLotId }) => (currentLotId === null ? [] : [currentLotId]));
  const lots = await tx.lot.findMany({ where: { id: { in: ids } }, include: lotIncluded });
  const byId = new Map(lots.map((lot) => [lot.id, lot]));
  return tanks.map((tank) => view(tank, byId.get(tank.currentLotId ?? '')));
};

export const findTank = async (tx: Tx, id: string): Promise<TankRow> =>
  orNotFound(await tx.tank.findUnique({ where: { id }, include: included }), 'tank', id);

export const showTank = async (tx: Tx, id: string): Promise<TankView> => {
  const [shown] = await tankViews(tx, [await findTank(tx, id)]);
  return orNotFound(shown, 'tank', id);
};

/** Names in alphabetical order, from the one after `after`. */
export const listTanks = (tx: Tx, limit: number, after: string | undefined): Promise<TankRow[]> =>
  tx.tank.findMany({
    where: after === undefined ? {} : { name: { gt: after } },
    include: included,
    orderBy: { name: 'asc' },
    take: limit + 1,
  });

/** What is in a tank from now on; null when it was emptied. */
export const setCurrentLot = async (
  tx: Tx,
  tankId: string,
  lotId: string | null,
): Promise<void> => {
  await tx.tank.update({
    where: { id: tankId },
    data: { currentLotId: lotId, version: { increment: 1 } },
    select: { id: true },
  });
};
