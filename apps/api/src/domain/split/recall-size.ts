import type { LotGraph } from '../provenance';
import { sharesAhead } from '../provenance';

export interface SentOut {
  readonly lot: string;
  readonly boxes: number;
  /** Absent: sold over the counter to a person nobody can write to. */
  readonly customer?: string;
}

export interface RecallSize {
  readonly lot: string;
  readonly boxes: number;
  readonly counterBoxes: number;
  readonly customers: number;
}

/** What a recall of each lot alone would touch, largest first: where mixing costs most. */
export const recallSizes = (
  graph: LotGraph,
  lots: readonly string[],
  sentOut: readonly SentOut[],
): RecallSize[] => {
  const byLot = new Map<string, SentOut[]>();
  for (const sent of sentOut) byLot.set(sent.lot, [...(byLot.get(sent.lot) ?? []), sent]);
  return lots
    .map((lot) => {
      const touched = [...sharesAhead(graph, [lot]).keys()].flatMap((one) => byLot.get(one) ?? []);
      const boxes = (some: readonly SentOut[]): number =>
        some.reduce((total, sent) => total + sent.boxes, 0);
      return {
        lot,
        boxes: boxes(touched),
        counterBoxes: boxes(touched.filter((sent) => sent.customer === undefined)),
        customers: new Set(touched.flatMap((sent) => sent.customer ?? [])).size,
      };
    })
    .sort((a, b) => b.boxes - a.boxes || b.customers - a.customers || (a.lot < b.lot ? -1 : 1));
};
