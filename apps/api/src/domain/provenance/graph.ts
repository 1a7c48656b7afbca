import { ok, refuse, type Result } from '../refusals/result';
import {
  batchWeights,
  inMilligrams,
  type Batch,
  type BatchInMilligrams,
  type BatchWeights,
} from './batch-weights';
import type { ProvenanceRefusal } from './refusals';
import { say } from '../words/say';

export interface GraphBatch extends BatchWeights {
  readonly id: string;
  /** Made lots, each once. */
  readonly outputs: readonly string[];
}

/** Batches in an order in which each comes after the batches that made what it draws. */
export interface LotGraph {
  readonly batches: readonly GraphBatch[];
  /** Made lot → its batch's place in `batches`. A lot that is absent was received. */
  readonly madeBy: ReadonlyMap<string, number>;
}

/** Builds the graph of lots. Refuses a circle, a lot made twice, and losses above the draws. */
export const lotGraph = (batches: Iterable<Batch>): Result<LotGraph, ProvenanceRefusal> =>
  lotGraphInMilligrams([...batches].map(inMilligrams));

export const lotGraphInMilligrams = (
  batches: Iterable<BatchInMilligrams>,
): Result<LotGraph, ProvenanceRefusal> => {
  const read: GraphBatch[] = [];
  const madeBy = new Map<string, number>();
  for (const batch of batches) {
    const weights = batchWeights(batch);
    if (!weights.ok) return weights;
    const outputs = [...new Set(batch.outputs)];
    for (const lot of outputs) {
      if (madeBy.has(lot)) return madeTwice(lot);
      madeBy.set(lot, read.length);
    }
    read.push({ id: batch.id, ...weights.value, outputs });
  }
  const order = topologicalOrder(read, madeBy);
  if (!order.ok) return order;
  const placeOf = new Map(order.value.map((old, place) => [old, place]));
  return ok({
    batches: order.value.flatMap((old) => read[old] ?? []),
    madeBy: new Map([...madeBy].map(([lot, old]) => [lot, placeOf.get(old) ?? 0])),
  });
};

/** Kahn's order; what is left over when no batch is free lies on or behind a circle. */
const topologicalOrder = (
  batches: readonly GraphBatch[],
  madeBy: ReadonlyMap<string, number>,
): Result<number[], ProvenanceRefusal> => {
  const waiting = new Array<number>(batches.length).fill(0);
  const followers: number[][] = batches.map(() => []);
  batches.forEach((batch, index) => {
    for (const lot of batch.lots) {
      const maker = madeBy.get(lot);
      if (maker === undefined) continue;
      followers[maker]?.push(index);
      waiting[index] = (waiting[index] ?? 0) + 1;
    }
  });
  const order = batches.flatMap((_, index) => (waiting[index] === 0 ? [index] : []));
  // The list grows while it is read: a batch that comes free is read after those before it.
  for (const free of order) {
    for (const next of followers[free] ?? []) {
      const left = (waiting[next] ?? 0) - 1;
      waiting[next] = left;
      if (left === 0) order.push(next);
    }
  }
  return order.length === batches.length ? ok(order) : circle(batches, madeBy, new Set(order));
};

const madeTwice = (lot: string): Result<never, ProvenanceRefusal> =>
  refuse({
    code: 'lot-made-twice',
    detail: say`Lot ${lot} is recorded as made by two batches. A lot has one origin.`,
    facts: { lot },
  });

/** Follows makers back from any batch that never came free until one repeats: that is a circle. */
const circle = (
  batches: readonly GraphBatch[],
  madeBy: ReadonlyMap<string, number>,
  free: ReadonlySet<number>,
): Result<never, ProvenanceRefusal> => {
  const path: { batch: number; through: string }[] = [];
  let at = batches.findIndex((_, index) => !free.has(index));
  while (!path.some((step) => step.batch === at)) {
    const blocked = batches[at]?.lots.find((lot) => {
      const maker = madeBy.get(lot);
      return maker !== undefined && !free.has(maker);
    });
    path.push({ batch: at, through: blocked ?? '' });
    at = madeBy.get(blocked ?? '') ?? at;
  }
  const lots = path.slice(path.findIndex((step) => step.batch === at)).map((step) => step.through);
  return refuse({
    code: 'lot-is-its-own-ancestor',
    detail: say`Lot ${lots[0] ?? ''} would be inside itself (through ${lots.join(', ')}). Rework makes a new lot.`,
    facts: { lots },
  });
};
