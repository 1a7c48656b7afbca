import type { Prisma, RecallCase } from '../../generated/prisma/client';
import { changeSinceFrozen } from '../../domain/recall';
import type { Tx } from '../../platform/database/prisma';
import {
  currentScope,
  effectivenessView,
  recoveredGrams,
  type RecoveredGoods,
  scopeLots,
  sentGrams,
  withoutExcluded,
} from './recall-scope';
import type { RecallHeadView, RecallView, ScopeChangeView, ScopeView } from './recalls.dto';
import { type CaseWithActions, customersById, peopleById } from './recalls.repository';

/** What the case was opened from, as it is kept in `roots`. */
export interface KeptRoots {
  readonly kind: string;
  readonly because: string;
  readonly lotIds: string[];
}

export const keptRoots = (recall: RecallCase): KeptRoots[] =>
  recall.roots as unknown as KeptRoots[];

export const rootIdsOf = (recall: RecallCase): string[] => [
  ...new Set(keptRoots(recall).flatMap((roots) => roots.lotIds)),
];

const CAUTION =
  'The scope is what this record can reach. Whether and how to recall, and whom to tell, is for ' +
  'the responsible person together with the food authority. A lot is never safe because it is not listed.';

export const headView = (recall: RecallCase): RecallHeadView => ({
  code: recall.code,
  mode: recall.mode,
  state: recall.state,
  reason: recall.reason,
  because: keptRoots(recall).map((roots) => roots.because),
  openedAt: recall.openedAt.toISOString(),
  frozenAt: recall.frozenAt?.toISOString() ?? null,
  closedAt: recall.closedAt?.toISOString() ?? null,
  version: recall.version,
});

const detailOf = (action: { readonly detail: Prisma.JsonValue }): Record<string, unknown> =>
  action.detail as Record<string, unknown>;

export const recoveredIn = (recall: CaseWithActions): RecoveredGoods[] =>
  recall.actions
    .filter((action) => action.kind === 'recovered')
    .map((action) => detailOf(action) as unknown as RecoveredGoods);

export const frozenScopeOf = (recall: RecallCase): ScopeView | null =>
  recall.frozenScope as unknown as ScopeView | null;

/** The reading of the record that later ones are compared with. */
const scopeAsKnown = (recall: CaseWithActions): ScopeView | undefined => {
  const frozen = frozenScopeOf(recall);
  if (frozen !== null) return frozen;
  const opened = recall.actions.find((action) => action.kind === 'opened');
  return opened && (detailOf(opened)['scope'] as ScopeView | undefined);
};

const changesSince = (known: ScopeView | undefined, current: ScopeView): ScopeChangeView[] => {
  if (known === undefined) return [];
  const scope = withoutExcluded(current, known.excluded);
  return changeSinceFrozen(
    { askedAt: known.askedAt, lots: scopeLots(known) },
    scopeLots(scope),
  ).map(({ lot, change, fields }) => ({
    lot,
    change,
    detail:
      fields
        ?.map(({ field, was, is }) => `${field} ${was.toFixed()} → ${is.toFixed()}`)
        .join(', ') ?? null,
  }));
};

export const recallView = async (
  tx: Tx,
  recall: CaseWithActions,
  now: Date,
): Promise<RecallView> => {
  const current = await currentScope(tx, rootIdsOf(recall), now);
  const scope = frozenScopeOf(recall) ?? current;
  const recovered = recoveredIn(recall);
  const sent = sentGrams(scope.sales);
  const customers = await customersById(
    tx,
    [...sent.keys()].flatMap((id) => id ?? []),
  );
  const names = new Map(customers.map((customer) => [customer.id, customer.name]));
  const people = await peopleById(
    tx,
    recall.actions.map((action) => action.userId),
  );
  const told = new Set(
    recall.actions
      .filter((action) => action.kind === 'customer_told')
      .map((action) => detailOf(action)['customerId']),
  );
  const excluded = new Set(scope.excluded.map((row) => row.lot));
  return {
    ...headView(recall),
    caution: CAUTION,
    scope,
    changes: changesSince(scopeAsKnown(recall), current),
    customers: customers.map((customer) => ({
      id: customer.id,
      name: customer.name,
      addressLines: customer.addressLines,
      phone: customer.phone,
      email: customer.email,
      distributedGrams: (sent.get(customer.id) ?? recoveredGrams([], null)).toFixed(3),
      recoveredGrams: recoveredGrams(recovered, customer.id).toFixed(3),
      told: told.has(customer.id),
    })),
    notHeld: current.lots
      .filter((lot) => !lot.held && Number(lot.onHandQuantity) > 0 && !excluded.has(lot.code))
      .map((lot) => lot.code),
    effectiveness: effectivenessView(scope.sales, recovered, (id) => names.get(id) ?? id),
    actions: recall.actions.map((action) => ({
      kind: action.kind,
      at: action.at.toISOString(),
      person: people.get(action.userId) ?? '',
      detail: action.kind === 'opened' ? {} : detailOf(action),
      afterSeconds: Math.round((action.at.getTime() - recall.openedAt.getTime()) / 1000),
    })),
    closeReport: recall.closeReport as Record<string, unknown> | null,
  };
};
