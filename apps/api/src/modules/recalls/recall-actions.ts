import type { Prisma } from '../../generated/prisma/client';
import type { CaseWithActions } from './recalls.repository';
import type { RecoveredGoods } from './scope-figures';

/** What was written down with a step of the case. */
export const detailOf = (action: { readonly detail: Prisma.JsonValue }): Record<string, unknown> =>
  action.detail as Record<string, unknown>;

export const recoveredIn = (recall: CaseWithActions): RecoveredGoods[] =>
  recall.actions
    .filter((action) => action.kind === 'recovered')
    .map((action) => detailOf(action) as unknown as RecoveredGoods);
