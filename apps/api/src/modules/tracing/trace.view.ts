import {
  amountsBehind,
  gramsText,
  milligramsOf,
  ratioText,
  sharesAhead,
  WHOLE,
  type LotGraph,
} from '../../domain/provenance';
import type { Subgraph } from './subgraph';
import type { Direction } from './subgraph.queries';
import type { BatchRow, DetailRows, LotRow } from './subgraph.rows';
import type { TracedBatchView, TracedLotView, TraceView } from './trace.dto';

interface Shared {
  /** Exact grams of a lot in all roots together, times the fixed-point whole. */
  readonly behind: ReadonlyMap<string, bigint>;
  readonly ahead: ReadonlyMap<string, bigint>;
  readonly rootMg: bigint;
}

const sharedOf = (graph: LotGraph, roots: readonly LotRow[], direction: Direction): Shared => {
  const start = new Map(roots.map((row) => [row[1], BigInt(row[4]) * WHOLE]));
  const rootCodes = roots.map((row) => row[1]);
  return {
    behind: direction === 'forward' ? new Map() : amountsBehind(graph, start, 'mass'),
    ahead: direction === 'back' ? new Map() : sharesAhead(graph, rootCodes),
    rootMg: roots.reduce((total, row) => total + BigInt(row[4]), 0n),
  };
};

type SharedFields = Pick<TracedLotView, 'sharedMassGrams' | 'sharedRatio'>;
const UNKNOWN: SharedFields = { sharedMassGrams: null, sharedRatio: null };

const sharedFields = (
  row: LotRow,
  side: TracedLotView['side'],
  shared: Shared | undefined,
): SharedFields => {
  if (shared === undefined) return UNKNOWN;
  if (side === 'behind') {
    const amount = shared.behind.get(row[1]);
    if (amount === undefined) return UNKNOWN;
    return {
      sharedMassGrams: gramsText(milligramsOf(amount, 1n)),
      sharedRatio: ratioText(shared.rootMg === 0n ? 0n : amount / shared.rootMg),
    };
  }
  const share = side === 'root' ? WHOLE : shared.ahead.get(row[1]);
  if (share === undefined) return UNKNOWN;
  return {
    sharedMassGrams: gramsText(milligramsOf(share, BigInt(row[4]))),
    sharedRatio: ratioText(share),
  };
};

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

const lotViews = (
  { rows, lots }: Subgraph<DetailRows>,
  rootIds: ReadonlySet<string>,
  shared: Shared | undefined,
): TracedLotView[] => {
  const held = new Set(rows.held ?? []);
  const received = new Map((rows.received ?? []).map((row) => [row[0], row]));
  return lots.map((row, number) => {
    const side = rootIds.has(row[0]) ? 'root' : row[12] === 1 ? 'behind' : 'ahead';
    const [itemName = '', itemKind = '', unit = ''] = rows.items?.[row[2]] ?? [];
    const origin = received.get(number);
    return {
      code: row[1],
      side,
      itemName,
      itemKind,
      unit,
      madeByBatch: row[3] === null ? null : (rows.batches?.[row[3]]?.[1] ?? null),
      madeQuantity: row[5],
      madeMassGrams: gramsText(BigInt(row[4])),
      onHandQuantity: row[6],
      onHandMassGrams: gramsText(BigInt(row[7])),
      madeOn: row[8],
      bestBefore: row[9],
      useBy: row[10],
      place: row[11] === null ? null : (rows.places?.[row[11]] ?? null),
      held: held.has(number),
      refused: row[14],
      supplier: origin?.[1] ?? null,
      supplierLotCode: origin?.[2] ?? null,
      ...sharedFields(row, side, shared),
    };
  });
};

export interface Question {
  readonly direction: Direction;
  readonly rootIds: readonly string[];
  readonly because: string | null;
  readonly askedAt: Date;
}

/** The subgraph in words and figures, with nothing looked up again. */
export const traceView = (subgraph: Subgraph<DetailRows>, question: Question): TraceView => {
  const { rows, lots, graph } = subgraph;
  const rootIds = new Set(question.rootIds);
  const roots = lots.filter((row) => rootIds.has(row[0]));
  const shared = graph.ok ? sharedOf(graph.value, roots, question.direction) : undefined;
  const code = (number: number | null): string =>
    number === null ? '' : (lots[number]?.[1] ?? '');
  const batchCode = (number: number | null): string =>
    number === null ? '' : (rows.batches?.[number]?.[1] ?? '');
  return {
    direction: question.direction,
    askedAt: question.askedAt.toISOString(),
    roots: roots.map((row) => row[1]),
    because: question.because,
    sharesProblem: graph.ok ? null : graph.refusal.detail,
    lots: lotViews(subgraph, rootIds, shared),
    batches: (rows.batches ?? []).map((row) => batchView(row, rows)),
    flows: (rows.draws ?? []).flatMap(([batch, lot, mg, quantity]) =>
      lot === null || quantity === null
        ? []
        : [{ batch: batchCode(batch), lot: code(lot), quantity, massGrams: gramsText(BigInt(mg)) }],
    ),
    heelLinks: (rows.heels ?? []).map(([batch, lot]) => ({
      batch: batchCode(batch),
      lot: code(lot),
    })),
    dispatches: (rows.dispatched ?? []).map((row) => {
      const share = shared?.ahead.get(code(row[0]));
      return {
        lot: code(row[0]),
        dispatch: row[1],
        customerId: row[2],
        customer: row[3],
        sentOn: row[4],
        quantity: row[5],
        massGrams: gramsText(BigInt(row[6])),
        sharedMassGrams:
          share === undefined ? null : gramsText(milligramsOf(share, BigInt(row[6]))),
      };
    }),
    moves: (rows.moves ?? []).map(([lot, kind, quantity, mg]) => ({
      lot: code(lot),
      kind,
      quantity,
      massGrams: gramsText(BigInt(mg)),
    })),
    failedReadings: (rows.readings ?? []).map((row) => ({
      batch: row[0] === null ? null : batchCode(row[0]),
      lot: row[1] === null ? null : code(row[1]),
      measure: row[2],
      value: row[3],
      verdict: row[4],
      at: row[5],
      person: rows.people?.[row[6]] ?? null,
      correctiveAction: row[7],
    })),
  };
};
