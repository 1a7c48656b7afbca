import { WHOLE } from './fixed-point';
import type { BatchWeights, Weighting } from './batch-weights';
import type { LotGraph } from './graph';

/** Which of a batch's two weightings a walk reads; see `batchWeights`. */
export type Measure = 'mass' | 'ingoing';

/** Lot → share, as a fixed-point number of `fixed-point.ts`. A lot in reach may have share zero. */
export type Shares = ReadonlyMap<string, bigint>;

const part = (share: bigint, weighting: Weighting, index: number): bigint =>
  weighting.denominatorMg > 0n
    ? (share * (weighting.numeratorsMg[index] ?? 0n)) / weighting.denominatorMg
    : 0n;

const add = (shares: Map<string, bigint>, lot: string, share: bigint): void => {
  shares.set(lot, (shares.get(lot) ?? 0n) + share);
};

/** Grams of each ancestor lot per gram of `focal`, itself included with one. */
export const sharesBehind = (graph: LotGraph, focal: string, measure: Measure): Shares =>
  amountsBehind(graph, new Map([[focal, WHOLE]]), measure);

/**
 * Carries an amount of some lots back to all that is behind them, themselves included. Visits each
 * batch of the graph once, latest first, so a tank of 300 charges costs 300 steps and not 2^300
 * paths.
 */
export const amountsBehind = (graph: LotGraph, start: Shares, measure: Measure): Shares => {
  const amounts = new Map(start);
  for (let place = graph.batches.length - 1; place >= 0; place -= 1) {
    const batch = graph.batches[place];
    if (!batch) continue;
    let made: bigint | undefined;
    for (const lot of batch.outputs) {
      const amount = amounts.get(lot);
      if (amount !== undefined) made = (made ?? 0n) + amount;
    }
    if (made === undefined) continue;
    const weighting = batch[measure];
    for (const [index, lot] of batch.lots.entries())
      add(amounts, lot, part(made, weighting, index));
  }
  return amounts;
};

const mixOf = (
  batch: BatchWeights,
  shares: Shares,
  measure: Measure,
): { readonly reached: boolean; readonly share: bigint } => {
  const { numeratorsMg, denominatorMg } = batch[measure];
  let reached = false;
  let weighed = 0n;
  for (const [index, lot] of batch.lots.entries()) {
    const share = shares.get(lot);
    if (share === undefined) continue;
    reached = true;
    weighed += share * (numeratorsMg[index] ?? 0n);
  }
  return { reached, share: denominatorMg > 0n ? weighed / denominatorMg : 0n };
};

/**
 * Grams of the root lots, taken together, per gram of each lot that any of them reached. A root
 * that was made from another root counts as whole: it is one of the lots that are asked about.
 */
export const sharesAhead = (
  graph: LotGraph,
  roots: Iterable<string>,
  measure: Measure = 'mass',
): Shares => {
  const shares = new Map<string, bigint>();
  for (const root of roots) shares.set(root, WHOLE);
  for (const batch of graph.batches) {
    const { reached, share } = mixOf(batch, shares, measure);
    if (!reached) continue;
    for (const lot of batch.outputs) if (!shares.has(lot)) shares.set(lot, share);
  }
  return shares;
};

/** Batches that drew from any lot of `shares`: open and abandoned ones are among them. */
export const batchesReached = (graph: LotGraph, shares: Shares): string[] =>
  graph.batches
    .filter((batch) => batch.lots.some((lot) => shares.has(lot)))
    .map((batch) => batch.id);
