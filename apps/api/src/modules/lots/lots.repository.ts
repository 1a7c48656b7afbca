import type { Prisma } from '../../generated/prisma/client';
import { dayToDb } from '../../platform/database/days';
import type { Tx } from '../../platform/database/prisma';
import type { LotQuery } from './lots.dto';

const asShown = {
  item: true,
  place: true,
  batch: { select: { code: true } },
  holds: { orderBy: { placedAt: 'desc' } },
  deliveryLine: { include: { delivery: { include: { supplier: true } } } },
} as const satisfies Prisma.LotInclude;

export type LotRow = Prisma.LotGetPayload<{ include: typeof asShown }>;

export const findLot = (tx: Tx, code: string): Promise<LotRow | null> =>
  tx.lot.findUnique({ where: { code }, include: asShown });

const SOME = { gt: 0 } as const;
const OPEN_HOLD = { some: { releasedAt: null } } as const;

const stateFilter = (state: LotQuery['state'], today: Date): Prisma.LotWhereInput => {
  switch (state) {
    case undefined:
      return {};
    case 'on_hand':
      return { onHandQuantity: SOME };
    case 'on_hold':
      return { onHandQuantity: SOME, holds: OPEN_HOLD };
    case 'expired':
      return { onHandQuantity: SOME, useBy: { lt: today } };
    case 'empty':
      return { onHandQuantity: 0, refused: false };
    case 'refused':
      return { refused: true };
  }
};

const expiringFilter = (before: string | undefined): Prisma.LotWhereInput => {
  if (before === undefined) return {};
  const day = dayToDb(before);
  return { onHandQuantity: SOME, OR: [{ useBy: { lt: day } }, { bestBefore: { lt: day } }] };
};

/** Latest first; ids sort by time, so the id is the cursor. */
export const listLots = (
  tx: Tx,
  limit: number,
  query: LotQuery,
  at: { after: string | undefined; today: Date },
): Promise<LotRow[]> =>
  tx.lot.findMany({
    where: {
      AND: [
        query.item === undefined ? {} : { itemId: query.item },
        query.kind === undefined ? {} : { item: { kind: query.kind } },
        query.place === undefined ? {} : { placeId: query.place },
        at.after === undefined ? {} : { id: { lt: at.after } },
        stateFilter(query.state, at.today),
        expiringFilter(query['expiring-before']),
      ],
    },
    orderBy: { id: 'desc' },
    include: asShown,
    take: limit + 1,
  });

/** Names of the people behind the ids; someone who left keeps their name. */
export const userNames = async (
  tx: Tx,
  ids: readonly string[],
): Promise<ReadonlyMap<string, string>> => {
  const users = await tx.user.findMany({
    where: { id: { in: [...new Set(ids)] } },
    select: { id: true, name: true },
  });
  return new Map(users.map((user) => [user.id, user.name]));
};

const movementAsShown = { reversedBy: { select: { id: true } } } as const;

export const listMovements = (tx: Tx, lotId: string) =>
  tx.movement.findMany({
    where: { lotId },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
    include: movementAsShown,
  });

export type MovementRow = Awaited<ReturnType<typeof listMovements>>[number];

export const findMovement = (tx: Tx, id: string): Promise<MovementRow | null> =>
  tx.movement.findUnique({ where: { id }, include: movementAsShown });
