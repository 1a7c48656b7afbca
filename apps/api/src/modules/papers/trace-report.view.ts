import type { TraceReportView } from '../../documents';
import type { TracedLotView, TraceView, TracingService } from '../tracing';

type BalanceView = Awaited<ReturnType<TracingService['balance']>>;

type Lot = TraceReportView['roots'][number];

const unitOf = (unit: string): 'g' | 'pc' => (unit === 'pc' ? 'pc' : 'g');

const lotView = (lot: TracedLotView): Lot => ({
  code: lot.code,
  itemName: lot.itemName,
  madeOn: lot.madeOn,
  made: lot.madeQuantity,
  onHand: lot.onHandQuantity,
  unit: unitOf(lot.unit),
  supplierLot:
    lot.supplier === null && lot.supplierLotCode === null
      ? null
      : [lot.supplier, lot.supplierLotCode].filter((text) => text !== null).join(', '),
  batchCode: lot.madeByBatch,
  sharedMassG: lot.sharedMassGrams,
  held: lot.held,
});

const balanceOf = (balance: BalanceView | null): TraceReportView['balance'] => {
  if (balance === null) return null;
  const line = (row: BalanceView['ends'][number]) => ({
    kind: row.kind,
    note: row.note,
    quantity: row.quantity,
    percent: row.percent,
  });
  return {
    unit: balance.unit,
    sources: balance.sources.map(line),
    ends: [...balance.ends, ...balance.named].map(line),
    sourceQuantity: balance.sourceQuantity,
    unexplainedQuantity: balance.unexplainedQuantity,
    accountedPercent: balance.accountedPercent,
  };
};

/** The trace as it was answered, arranged for paper. */
export const traceReportView = (
  trace: TraceView,
  subject: { readonly words: string; readonly code: string | null },
  balance: BalanceView | null,
): TraceReportView => {
  const byCode = new Map(trace.lots.map((lot) => [lot.code, lot]));
  const side = (wanted: TracedLotView['side']): Lot[] =>
    trace.lots.filter((lot) => lot.side === wanted).map(lotView);
  return {
    subject: subject.words,
    subjectCode: subject.code,
    askedAt: new Date(trace.askedAt),
    roots: side('root'),
    behind: side('behind'),
    ahead: side('ahead'),
    sent: trace.dispatches.map((row) => {
      const lot = byCode.get(row.lot);
      return {
        customerName: row.customer,
        sentOn: row.sentOn,
        dispatchCode: row.dispatch,
        lotCode: row.lot,
        itemName: lot?.itemName ?? '',
        quantity: row.quantity,
        unit: unitOf(lot?.unit ?? 'g'),
      };
    }),
    throughTank: trace.batches.some(({ tank }) => tank !== null),
    balance: balanceOf(balance),
  };
};
