import type { ScopeLot } from '../../domain/recall';
import { Decimal } from '../../domain/units';
import { quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { loadDetailedSubgraph, type TracedLotView, traceView, type TraceView } from '../tracing';
import type {
  ExcludedLotDto,
  ScopeEndView,
  ScopeLotView,
  ScopeSaleView,
  ScopeView,
} from './scope.dto';
import { say } from '../../domain/words/say';

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

type LotOf = ReadonlyMap<string, TracedLotView>;

const salesOf = (trace: TraceView, lotOf: LotOf): ScopeSaleView[] =>
  trace.dispatches.map((sale) => {
    const lot = lotOf.get(sale.lot);
    return {
      lot: sale.lot,
      unit: unitOf(lot?.unit ?? 'g'),
      itemName: lot?.itemName ?? '',
      itemKind: lot?.itemKind ?? '',
      dispatch: sale.dispatch,
      sentOn: sale.sentOn,
      customerId: sale.customerId,
      quantity: sale.quantity,
      massGrams: sale.massGrams,
      returnedQuantity: sale.returnedQuantity,
      returnedMassGrams: sale.returnedMassGrams,
    };
  });

const endsOf = (trace: TraceView, lotOf: LotOf): ScopeEndView[] => {
  const open = new Set(trace.batches.filter((row) => row.state === 'open').map((row) => row.code));
  const unit = (lot: string): 'g' | 'pc' => unitOf(lotOf.get(lot)?.unit ?? 'g');
  return [
    ...trace.moves.map((move) => ({
      lot: move.lot,
      unit: unit(move.lot),
      what: move.kind,
      quantity: move.quantity,
    })),
    ...trace.flows
      .filter((flow) => open.has(flow.batch))
      .map((flow) => ({
        lot: flow.lot,
        unit: unit(flow.lot),
        what: say`in open batch ${flow.batch}`,
        quantity: flow.quantity,
      })),
  ];
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
  return {
    askedAt: askedAt.toISOString(),
    sharesProblem: trace.sharesProblem,
    lots: trace.lots.map((lot) => scopeLot(lot, trace)),
    sales: salesOf(trace, lotOf),
    ends: endsOf(trace, lotOf),
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
