import type { RecallCase } from '../../generated/prisma/client';
import type { RecallView } from './recalls.dto';
import type { EffectivenessView, ScopeChangeView, ScopeCustomerView } from './scope.dto';

type CustomerFigures = Pick<
  ScopeCustomerView,
  'name' | 'boxes' | 'pieces' | 'distributedGrams' | 'recoveredGrams' | 'told'
>;

/** The figures of a case as they stood when it was closed. They are kept and never reckoned anew. */
export interface CloseReport {
  readonly conclusion: string;
  readonly effectiveness: EffectivenessView;
  readonly lots: number;
  readonly customers: number;
  readonly byCustomer: readonly CustomerFigures[];
  readonly changesSinceFrozen: readonly ScopeChangeView[];
  readonly notHeld: readonly string[];
  readonly secondsToFreeze: number | null;
  readonly secondsToClose: number | null;
}

const secondsBetween = (from: Date, to: Date | null): number | null =>
  to === null ? null : Math.round((to.getTime() - from.getTime()) / 1000);

export const closeReport = (
  recall: Pick<RecallCase, 'openedAt' | 'frozenAt'>,
  view: RecallView,
  conclusion: string,
  closedAt: Date,
): CloseReport => ({
  conclusion,
  effectiveness: { ...view.effectiveness },
  lots: view.scope.lots.length,
  customers: view.customers.length,
  byCustomer: view.customers.map(
    ({ name, boxes, pieces, distributedGrams, recoveredGrams, told }) => ({
      name,
      boxes,
      pieces,
      distributedGrams,
      recoveredGrams,
      told,
    }),
  ),
  changesSinceFrozen: view.changes.map((change) => ({ ...change })),
  notHeld: view.notHeld,
  secondsToFreeze: secondsBetween(recall.openedAt, recall.frozenAt),
  secondsToClose: secondsBetween(recall.openedAt, closedAt),
});
