import type { RecallCase } from '../../generated/prisma/client';
import { changeSinceFrozen } from '../../domain/recall';
import type { Tx } from '../../platform/database/prisma';
import { currentScope, scopeLots, withoutExcluded } from './recall-scope';
import { detailOf, recoveredIn } from './recall-actions';
import type { RecallHeadView, RecallView } from './recalls.dto';
import { type CaseWithActions, peopleById } from './recalls.repository';
import { customerViews } from './scope-customers.view';
import type { ScopeChangeView, ScopeLotView, ScopeView, StillHereView } from './scope.dto';
import { effectivenessView, learnedSince } from './scope-figures';
import { say, type Sentence } from '../../domain/words/say';

/** What the case was opened from, as it is kept in `roots`. */
export interface KeptRoots {
  readonly kind: string;
  readonly because: Sentence;
  readonly lotIds: string[];
}

export const keptRoots = (recall: RecallCase): KeptRoots[] =>
  recall.roots as unknown as KeptRoots[];

export const rootIdsOf = (recall: RecallCase): string[] => [
  ...new Set(keptRoots(recall).flatMap((roots) => roots.lotIds)),
];

const CAUTION = say`The scope is what this record can reach. Whether and how to recall, and whom to tell, is for the responsible person together with the food authority. A lot is never safe because it is not listed.`;

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

export const frozenScopeOf = (recall: RecallCase): ScopeView | null =>
  recall.frozenScope as unknown as ScopeView | null;

/** The reading of the record that later ones are compared with. */
const scopeAsKnown = (recall: CaseWithActions): ScopeView | undefined => {
  const frozen = frozenScopeOf(recall);
  if (frozen !== null) return frozen;
  const opened = recall.actions.find((action) => action.kind === 'opened');
  return opened && (detailOf(opened)['scope'] as ScopeView | undefined);
};

const changesSince = (known: ScopeView | undefined, scope: ScopeView): ScopeChangeView[] => {
  if (known === undefined) return [];
  return changeSinceFrozen(
    { askedAt: known.askedAt, lots: scopeLots(known) },
    scopeLots(scope),
  ).map(({ lot, change, fields = [] }) => ({
    lot,
    change,
    fields: fields.map(({ field, was, is }) => ({ field, was: was.toFixed(3), is: is.toFixed(3) })),
  }));
};

const stillHere = (current: ScopeView, learned: readonly ScopeLotView[]): StillHereView[] => {
  const later = new Set(learned.map((lot) => lot.code));
  return current.lots
    .filter((lot) => Number(lot.onHandQuantity) > 0)
    .map((lot) => ({
      lot: lot.code,
      itemName: lot.itemName,
      unit: lot.unit,
      quantity: lot.onHandQuantity,
      place: lot.place,
      held: lot.held,
      learnedLater: later.has(lot.code),
    }));
};

const actionViews = async (tx: Tx, recall: CaseWithActions): Promise<RecallView['actions']> => {
  const people = await peopleById(
    tx,
    recall.actions.map((action) => action.userId),
  );
  return recall.actions.map((action) => ({
    kind: action.kind,
    at: action.at.toISOString(),
    person: people.get(action.userId) ?? '',
    detail: action.kind === 'opened' ? {} : detailOf(action),
    afterSeconds: Math.round((action.at.getTime() - recall.openedAt.getTime()) / 1000),
  }));
};

export const recallView = async (
  tx: Tx,
  recall: CaseWithActions,
  now: Date,
): Promise<RecallView> => {
  const frozen = frozenScopeOf(recall);
  const current = withoutExcluded(
    await currentScope(tx, rootIdsOf(recall), now),
    frozen?.excluded ?? [],
  );
  const scope = frozen ?? current;
  const learned = learnedSince(frozen, current);
  const sales = [...scope.sales, ...learned.sales];
  const customers = await customerViews(tx, recall, sales, scope.sales);
  const names = new Map(customers.map((customer) => [customer.id, customer.name]));
  return {
    ...headView(recall),
    caution: CAUTION,
    scope,
    learned,
    here: stillHere(current, learned.lots),
    changes: changesSince(scopeAsKnown(recall), current),
    customers,
    notHeld: current.lots
      .filter((lot) => !lot.held && Number(lot.onHandQuantity) > 0)
      .map((lot) => lot.code),
    effectiveness: effectivenessView(sales, recoveredIn(recall), (id) => names.get(id) ?? id),
    actions: await actionViews(tx, recall),
    closeReport: recall.closeReport as Record<string, unknown> | null,
  };
};
