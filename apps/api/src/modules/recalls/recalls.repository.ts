import type { Prisma, RecallAction, RecallCase } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';

export type CaseWithActions = RecallCase & { readonly actions: RecallAction[] };

export const findCase = (tx: Tx, code: string): Promise<CaseWithActions | null> =>
  tx.recallCase.findUnique({
    where: { code },
    include: { actions: { orderBy: [{ at: 'asc' }, { id: 'asc' }] } },
  });

/** Latest first; ids sort by time, so the id is the cursor. */
export const listCases = (
  tx: Tx,
  limit: number,
  filter: { after: string | undefined; state: string | undefined },
): Promise<RecallCase[]> =>
  tx.recallCase.findMany({
    where: {
      ...(filter.state === undefined ? {} : { state: filter.state }),
      ...(filter.after === undefined ? {} : { id: { lt: filter.after } }),
    },
    orderBy: { id: 'desc' },
    take: limit + 1,
  });

export const changeCase = (
  tx: Tx,
  id: string,
  data: Prisma.RecallCaseUpdateInput,
): Promise<RecallCase> =>
  tx.recallCase.update({ where: { id }, data: { ...data, version: { increment: 1 } } });

export const addAction = async (
  tx: Tx,
  by: By,
  caseId: string,
  kind: string,
  detail: Prisma.InputJsonObject = {},
): Promise<void> => {
  await tx.recallAction.create({
    data: { id: newId(), caseId, kind, detail, at: by.at, userId: by.userId },
    select: { id: true },
  });
};

export const lotsByCode = (tx: Tx, codes: readonly string[]) =>
  tx.lot.findMany({ where: { code: { in: [...codes] } }, select: { id: true, code: true } });

/** Lots that this case holds already. */
export const heldByCase = async (tx: Tx, caseId: string): Promise<Set<string>> => {
  const holds = await tx.hold.findMany({
    where: { causeId: caseId, releasedAt: null },
    select: { lotId: true },
  });
  return new Set(holds.map((hold) => hold.lotId));
};

export const customersById = (tx: Tx, ids: readonly string[]) =>
  tx.customer.findMany({ where: { id: { in: [...ids] } }, orderBy: { name: 'asc' } });

export const peopleById = async (tx: Tx, ids: readonly string[]): Promise<Map<string, string>> => {
  const users = await tx.user.findMany({
    where: { id: { in: [...new Set(ids)] } },
    select: { id: true, name: true },
  });
  return new Map(users.map((user) => [user.id, user.name]));
};

/** Dispatch lines of a lot to one receiver, oldest first, with what came back of each. */
export const linesSentTo = (tx: Tx, lotId: string, customerId: string | null) =>
  tx.dispatchLine.findMany({
    where: { lotId, dispatch: { customerId } },
    include: { dispatch: true },
    orderBy: [{ dispatch: { at: 'asc' } }, { id: 'asc' }],
  });

export const returnedOf = (tx: Tx, lineIds: readonly string[]) =>
  tx.movement.findMany({ where: { kind: 'returned', dispatchLineId: { in: [...lineIds] } } });
