import { effectiveness, type ScopeLot } from '../../domain/recall';
import { Decimal } from '../../domain/units';
import { quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { loadDetailedSubgraph, type TracedLotView, traceView, type TraceView } from '../tracing';
import type {
  EffectivenessView,
  ExcludedLotDto,
  ScopeLotView,
  ScopeSaleView,
  ScopeView,
} from './recalls.dto';

const unitOf = (unit: string): 'g' | 'pc' => (unit === 'pc' ? 'pc' : 'g');

const quantitySum = (values: readonly string[]): string =>
  quantityText(values.reduce((total, value) => total.plus(value), new Decimal(0)));

const scopeLot = (lot: TracedLotView, trace: TraceView): ScopeLotView => {
  const sent = trace.dispatches.filter((sale) => sale.lot === lot.code);
  const quantities = (some: typeof sent): string => quantitySum(some.map((sale) => sale.quantity));
  return {
    code: lot.code,
    itemName: lot.itemName,
    itemKind: lot.itemKind,
    unit: unitOf(lot.unit),
    root: lot.side === 'root',
    sharedRatio: lot.sharedRatio,
    madeQuantity: lot.madeQuantity,
    bestBefore: lot.bestBefore,
    useBy: lot.useBy,
    onHandQuantity: lot.onHandQuantity,
    place: lot.place,
    held: lot.held,
    dispatchedQuantity: quantities(sent.filter((sale) => sale.customerId !== null)),
    counterQuantity: quantities(sent.filter((sale) => sale.customerId === null)),
  };
};

/** What the record says now of everything that the root lots reached. Nothing is left out for its share. */
export const currentScope = async (
  tx: Tx,
  rootIds: readonly string[],
  askedAt: Date,
): Promise<ScopeView> => {
  const subgraph = await loadDetailedSubgraph(tx, rootIds, 'forward');
  const trace = traceView(subgraph, { direction: 'forward', rootIds, because: null, askedAt });
  const lotOf = new Map(trace.lots.map((lot) => [lot.code, lot]));
  const open = new Set(trace.batches.filter((row) => row.state === 'open').map((row) => row.code));
  const named = (code: string) => {
    const lot = lotOf.get(code);
    return { lot: code, unit: unitOf(lot?.unit ?? 'g') };
  };
  return {
    askedAt: askedAt.toISOString(),
    sharesProblem: trace.sharesProblem,
    lots: trace.lots.map((lot) => scopeLot(lot, trace)),
    sales: trace.dispatches.map((sale) => ({
      ...named(sale.lot),
      itemName: lotOf.get(sale.lot)?.itemName ?? '',
      dispatch: sale.dispatch,
      sentOn: sale.sentOn,
      customerId: sale.customerId,
      quantity: sale.quantity,
      massGrams: sale.massGrams,
    })),
    ends: [
      ...trace.moves.map((move) => ({
        ...named(move.lot),
        what: move.kind,
        quantity: move.quantity,
      })),
      ...trace.flows
        .filter((flow) => open.has(flow.batch))
        .map((flow) => ({
          ...named(flow.lot),
          what: `in open batch ${flow.batch}`,
          quantity: flow.quantity,
        })),
    ],
    excluded: [],
  };
};

/** The scope less the lots that a person took out, each with the reason. */
export const withoutExcluded = (
  scope: ScopeView,
  excluded: readonly ExcludedLotDto[],
): ScopeView => {
  const out = new Set(excluded.map((row) => row.lot));
  return {
    ...scope,
    lots: scope.lots.filter((lot) => !out.has(lot.code)),
    sales: scope.sales.filter((sale) => !out.has(sale.lot)),
    ends: scope.ends.filter((end) => !out.has(end.lot)),
    excluded: [...excluded],
  };
};

/** In the domain's figures, to compare two readings of the record. */
export const scopeLots = (scope: ScopeView): ScopeLot[] =>
  scope.lots.map((lot) => ({
    lot: lot.code,
    onHand: new Decimal(lot.onHandQuantity),
    dispatched: new Decimal(lot.dispatchedQuantity),
    counter: new Decimal(lot.counterQuantity),
  }));

export interface RecoveredGoods {
  readonly customerId: string | null;
  readonly massGrams: string;
}

/** Grams sent, by customer; the counter under null. */
export const sentGrams = (sales: readonly ScopeSaleView[]): Map<string | null, Decimal> => {
  const sent = new Map<string | null, Decimal>();
  for (const sale of sales) {
    const before = sent.get(sale.customerId) ?? new Decimal(0);
    sent.set(sale.customerId, before.plus(sale.massGrams));
  }
  return sent;
};

export const recoveredGrams = (
  recovered: readonly RecoveredGoods[],
  customerId: string | null,
): Decimal =>
  recovered
    .filter((row) => row.customerId === customerId)
    .reduce((total, row) => total.plus(row.massGrams), new Decimal(0));

/** In grams of food, the one measure that boxes and loose pieces share. */
export const effectivenessView = (
  sales: readonly ScopeSaleView[],
  recovered: readonly RecoveredGoods[],
  nameOf: (customerId: string) => string,
): EffectivenessView => {
  const rows = [...sentGrams(sales)].map(([customerId, distributed]) => ({
    ...(customerId === null ? {} : { customer: nameOf(customerId) }),
    distributed,
    recovered: recoveredGrams(recovered, customerId),
  }));
  const result = effectiveness(rows);
  return {
    distributedGrams: result.distributed.toFixed(3),
    recoveredGrams: result.recovered.toFixed(3),
    outstandingGrams: result.outstanding.toFixed(3),
    recoveredPercent: result.recoveredPercent?.toFixed(1) ?? null,
    overRecovered: [...result.overRecovered],
    notHeardFrom: [...result.notHeardFrom],
  };
};
