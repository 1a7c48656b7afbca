import type { RecallReportView } from '../../documents';
import { COUNTER } from '../../domain/recall';
import type { RecallActionView, RecallView } from './recalls.dto';
import type { CloseReport } from './close-report';

const text = (value: unknown): string => (typeof value === 'string' ? value : '');

const list = (value: unknown): string[] => (Array.isArray(value) ? value.map(text) : []);

/** What a step says of itself, in one line. */
const noteOf = ({ kind, detail }: RecallActionView, nameOf: (id: string) => string): string => {
  switch (kind) {
    case 'held':
      return list(detail['lots']).join(', ');
    case 'customer_told':
      return [nameOf(text(detail['customerId'])), text(detail['text'])].filter(Boolean).join(': ');
    case 'recovered': {
      const from = detail['customerId'] === null ? '' : nameOf(text(detail['customerId']));
      const parts = [text(detail['lot']), text(detail['quantity']), text(detail['outcome']), from];
      return parts.filter(Boolean).join(' · ');
    }
    default:
      return text(detail['text']);
  }
};

/** Null: the counter, which the domain names so. */
const receiver = (name: string): string | null => (name === COUNTER ? null : name);

const instant = (value: string | null): Date | null => (value === null ? null : new Date(value));

/** The case as a report: with the figures kept at its close, or with those of now. */
export const reportOf = (view: RecallView): RecallReportView => {
  const kept = view.closeReport as CloseReport | null;
  const figures = kept?.effectiveness ?? view.effectiveness;
  const names = new Map(view.customers.map((customer) => [customer.id, customer.name]));
  return {
    code: view.code,
    mode: view.mode === 'rehearsal' ? 'rehearsal' : 'real',
    reason: view.reason,
    because: view.because,
    openedAt: new Date(view.openedAt),
    frozenAt: instant(view.frozenAt),
    closedAt: instant(view.closedAt),
    conclusion: kept?.conclusion ?? null,
    distributedG: figures.distributedGrams,
    recoveredG: figures.recoveredGrams,
    outstandingG: figures.outstandingGrams,
    recoveredPercent: figures.recoveredPercent,
    notHeardFrom: figures.notHeardFrom.map(receiver),
    overRecovered: figures.overRecovered.map(receiver),
    customers: (kept?.byCustomer ?? view.customers).map((customer) => ({
      name: customer.name,
      boxes: customer.boxes,
      pieces: customer.pieces,
      distributedG: customer.distributedGrams,
      recoveredG: customer.recoveredGrams,
      told: customer.told,
    })),
    lots: kept?.lots ?? view.scope.lots.length,
    excluded: view.scope.excluded.map((row) => ({ lotCode: row.lot, reason: row.reason })),
    changes: (kept?.changesSinceFrozen ?? view.changes).map((row) => ({
      lotCode: row.lot,
      change: row.change,
      fields: row.fields,
    })),
    notHeld: kept?.notHeld ?? view.notHeld,
    steps: view.actions.map((action) => ({
      kind: action.kind,
      at: new Date(action.at),
      afterSeconds: action.afterSeconds,
      person: action.person,
      note: noteOf(action, (id) => names.get(id) ?? id),
    })),
  };
};
