import type { PlannedStart, SavedPlan } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound } from '../../platform/problems';
import { say } from '../../domain/words/say';
import type { PlanContent, PlanView } from './plan.dto';

type StoredPlan = SavedPlan & { readonly starts: readonly PlannedStart[] };

const withBatchCodes = async (tx: Tx, plans: readonly StoredPlan[]): Promise<PlanView[]> => {
  const ids = plans.flatMap(({ starts }) => starts.map(({ batchId }) => batchId));
  const batches = await tx.batch.findMany({
    where: { id: { in: ids } },
    select: { id: true, code: true },
  });
  const codeOf = new Map(batches.map(({ id, code }) => [id, code]));
  return plans.map((plan) => ({
    ...(plan.result as unknown as PlanContent),
    id: plan.id,
    madeAt: plan.at.toISOString(),
    started: plan.starts.map(({ key, batchId }) => ({
      key,
      batchId,
      batchCode: codeOf.get(batchId) ?? '',
    })),
  }));
};

/** Stored plans, the newest first; ids grow with time. */
export const listPlans = async (tx: Tx, limit: number, after?: string): Promise<PlanView[]> =>
  withBatchCodes(
    tx,
    await tx.savedPlan.findMany({
      ...(after === undefined ? {} : { where: { id: { lt: after } } }),
      orderBy: { id: 'desc' },
      take: limit,
      include: { starts: true },
    }),
  );

/** A stored plan with the batches that were opened from it; the newest when none is named. */
export const showPlan = async (tx: Tx, id?: string): Promise<PlanView> => {
  const row = await tx.savedPlan.findFirst({
    ...(id === undefined ? {} : { where: { id } }),
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    include: { starts: true },
  });
  const [plan] = await withBatchCodes(
    tx,
    [row].flatMap((found) => found ?? []),
  );
  return orNotFound(plan, 'plan', id ?? say`yet: make one first`);
};
