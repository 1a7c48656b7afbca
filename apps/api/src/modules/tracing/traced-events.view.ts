import { gramsText } from '../../domain/provenance';
import type { Subgraph } from './subgraph';
import type { BatchRow, DetailRows } from './subgraph.rows';
import type {
  HeelLinkView,
  TracedBatchView,
  TracedDispatchView,
  TracedFlowView,
  TracedMoveView,
  TracedReadingView,
} from './trace.dto';
import { type Shared, sharedIn } from './trace.shares';

type Detailed = Subgraph<DetailRows>;

const lotCode = ({ lots }: Detailed, number: number): string => lots[number]?.[1] ?? '';

const batchCode = ({ rows }: Detailed, number: number): string => rows.batches?.[number]?.[1] ?? '';

const batchView = (row: BatchRow, rows: DetailRows): TracedBatchView => ({
  code: row[1],
  kind: row[2],
  state: row[3],
  openedAt: row[4],
  endedAt: row[5],
  operator: rows.people?.[row[6]] ?? null,
  tank: row[7] === null ? null : (rows.tanks?.[row[7]] ?? null),
  place: row[8] === null ? null : (rows.places?.[row[8]] ?? null),
});

export const batchViews = ({ rows }: Detailed): TracedBatchView[] =>
  (rows.batches ?? []).map((row) => batchView(row, rows));

/** Draws of the lots that are in the trace; the others of a batch have no number. */
export const flowViews = (subgraph: Detailed): TracedFlowView[] =>
  (subgraph.rows.draws ?? []).flatMap(([batch, lot, mg, quantity]) =>
    lot === null || quantity === null
      ? []
      : [
          {
            batch: batchCode(subgraph, batch),
            lot: lotCode(subgraph, lot),
            quantity,
            massGrams: gramsText(BigInt(mg)),
          },
        ],
  );

export const heelViews = (subgraph: Detailed): HeelLinkView[] =>
  (subgraph.rows.heels ?? []).map(([batch, lot]) => ({
    batch: batchCode(subgraph, batch),
    lot: lotCode(subgraph, lot),
  }));

export const dispatchViews = (
  subgraph: Detailed,
  shared: Shared | undefined,
): TracedDispatchView[] =>
  (subgraph.rows.dispatched ?? []).map((row) => {
    const lot = lotCode(subgraph, row[0]);
    return {
      lot,
      dispatch: row[1],
      customerId: row[2],
      customer: row[3],
      sentOn: row[4],
      quantity: row[5],
      massGrams: gramsText(BigInt(row[6])),
      returnedQuantity: row[7],
      returnedMassGrams: gramsText(BigInt(row[8])),
      sharedMassGrams: sharedIn(shared, lot, row[6]),
    };
  });

export const moveViews = (subgraph: Detailed): TracedMoveView[] =>
  (subgraph.rows.moves ?? []).map(([lot, kind, quantity, mg]) => ({
    lot: lotCode(subgraph, lot),
    kind,
    quantity,
    massGrams: gramsText(BigInt(mg)),
  }));

export const readingViews = (subgraph: Detailed): TracedReadingView[] =>
  (subgraph.rows.readings ?? []).map((row) => ({
    id: row[8],
    batch: row[0] === null ? null : batchCode(subgraph, row[0]),
    lot: row[1] === null ? null : lotCode(subgraph, row[1]),
    measure: row[2],
    value: row[3],
    verdict: row[4],
    at: row[5],
    person: subgraph.rows.people?.[row[6]] ?? null,
    correctiveAction: row[7],
  }));
