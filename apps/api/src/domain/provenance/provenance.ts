import { ok, type Result } from '../refusals/result';
import { apportion, QUANTITY_PLACES, type Decimal } from '../units';
import type { Batch } from './batch-weights';
import { gramsOf, ratioOf } from './fixed-point';
import { lotGraph, type LotGraph } from './graph';
import type { ProvenanceRefusal } from './refusals';
import { sharesAhead, sharesBehind } from './shares';

/** What one ancestor lot gave to the lot in question. */
export interface Contribution {
  readonly lot: string;
  /** True when no batch of the graph made it: it was received. */
  readonly received: boolean;
  /** Its grams inside the weight asked about; losses have taken their share. */
  readonly massG: Decimal;
  /** The grams of it that went in for that weight, undiluted by steam: what a label ranks by. */
  readonly ingoingG: Decimal;
  readonly massRatio: Decimal;
}

/**
 * Grams of every ancestor lot in `massG` of a lot, the lot itself left out, largest first and then
 * by lot. Each figure is rounded on its own (half up, milligram); for parts that must sum to the
 * whole see `makeUp`.
 */
export const provenance = (graph: LotGraph, lot: string, massG: Decimal): Contribution[] => {
  const mass = sharesBehind(graph, lot, 'mass');
  const ingoing = sharesBehind(graph, lot, 'ingoing');
  return [...mass]
    .filter(([ancestor]) => ancestor !== lot)
    .map(([ancestor, share]) => ({
      lot: ancestor,
      received: !graph.madeBy.has(ancestor),
      massG: gramsOf(share, massG),
      ingoingG: gramsOf(ingoing.get(ancestor) ?? 0n, massG),
      massRatio: ratioOf(share),
    }))
    .sort((a, b) => b.massRatio.comparedTo(a.massRatio) || (a.lot < b.lot ? -1 : 1));
};

export interface Part {
  readonly lot: string;
  readonly massG: Decimal;
}

/**
 * The received lots inside `massG` of a lot, as printed parts that sum to `massG` exactly.
 * Empty when nothing of weight went in. Packaging is listed with zero grams.
 */
export const makeUp = (graph: LotGraph, lot: string, massG: Decimal): Part[] => {
  const behind = sharesBehind(graph, lot, 'mass');
  const received = [...behind].filter(([ancestor]) => !graph.madeBy.has(ancestor));
  const weights = received.map(([, share]) => ratioOf(share));
  if (weights.every((weight) => weight.isZero())) return [];
  const parts = apportion(massG, weights, QUANTITY_PLACES);
  return received.flatMap(([ancestor], index) => {
    const part = parts[index];
    return part ? [{ lot: ancestor, massG: part }] : [];
  });
};

export interface ReachedLot {
  readonly lot: string;
  /** Part of the lot that came from the roots, well mixed. Ranks and explains; never excludes. */
  readonly share: bigint;
  readonly ratio: Decimal;
}

/** Every lot that holds, or may hold, something of the roots; the roots themselves first. */
export const reach = (graph: LotGraph, roots: Iterable<string>): ReachedLot[] =>
  [...sharesAhead(graph, roots)].map(([lot, share]) => ({ lot, share, ratio: ratioOf(share) }));

/** `provenance` from recorded batches, for callers that ask about one lot only. */
export const provenanceOf = (
  batches: Iterable<Batch>,
  lot: string,
  massG: Decimal,
): Result<Contribution[], ProvenanceRefusal> => {
  const graph = lotGraph(batches);
  return graph.ok ? ok(provenance(graph.value, lot, massG)) : graph;
};
