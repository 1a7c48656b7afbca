import type { LotGraph } from '../provenance';
import { Decimal } from '../units';

export interface SentOut {
  readonly lot: string;
  readonly kind: 'box' | 'piece' | 'other';
  /** Not come back since. */
  readonly quantity: Decimal;
  /** Absent: sold over the counter to a person nobody can write to. */
  readonly customer?: string;
}

export interface StillHere {
  readonly lot: string;
  readonly kind: 'box' | 'piece' | 'other';
  readonly quantity: Decimal;
}

export interface RecallSize {
  readonly lot: string;
  /** Lots in reach, the lot itself left out. */
  readonly lots: number;
  readonly boxes: Decimal;
  readonly pieces: Decimal;
  /** Of the boxes and pieces, those of buyers nobody can write to. */
  readonly overTheCounter: Decimal;
  readonly customers: number;
  readonly boxesHere: Decimal;
}

/**
 * Which of the asked lots may be in each lot, one bit each. One walk in the order of making serves
 * them all, where a walk for each would cost as many walks as there are lots.
 */
const marksOf = (graph: LotGraph, asked: readonly string[]): Map<string, bigint> => {
  const marks = new Map(asked.map((lot, index) => [lot, 1n << BigInt(index)]));
  for (const batch of graph.batches) {
    let inside = 0n;
    for (const lot of batch.lots) inside |= marks.get(lot) ?? 0n;
    if (inside === 0n) continue;
    for (const lot of batch.outputs) marks.set(lot, (marks.get(lot) ?? 0n) | inside);
  }
  return marks;
};

/** Places of the bits that are set. */
const placesOf = (mark: bigint): number[] => {
  const bits = mark.toString(2);
  const places: number[] = [];
  for (let at = bits.indexOf('1'); at >= 0; at = bits.indexOf('1', at + 1)) {
    places.push(bits.length - 1 - at);
  }
  return places;
};

class Tally {
  lots = -1;
  boxes = new Decimal(0);
  pieces = new Decimal(0);
  overTheCounter = new Decimal(0);
  boxesHere = new Decimal(0);
  readonly customers = new Set<string>();

  sent({ kind, quantity, customer }: SentOut): void {
    if (kind === 'box') this.boxes = this.boxes.plus(quantity);
    if (kind === 'piece') this.pieces = this.pieces.plus(quantity);
    if (customer !== undefined) this.customers.add(customer);
    else if (kind !== 'other') this.overTheCounter = this.overTheCounter.plus(quantity);
  }

  size(lot: string): RecallSize {
    const { lots, boxes, pieces, overTheCounter, boxesHere } = this;
    return {
      lot,
      lots,
      boxes,
      pieces,
      overTheCounter,
      customers: this.customers.size,
      boxesHere,
    };
  }
}

/** What a recall of each lot alone would touch, largest first: where mixing costs most. */
export const recallSizes = (
  graph: LotGraph,
  asked: readonly string[],
  sentOut: readonly SentOut[],
  stillHere: readonly StillHere[] = [],
): RecallSize[] => {
  const tallies = asked.map(() => new Tally());
  const marks = marksOf(graph, asked);
  const each = (lot: string, book: (tally: Tally) => void): void => {
    for (const place of placesOf(marks.get(lot) ?? 0n)) {
      const tally = tallies[place];
      if (tally) book(tally);
    }
  };
  for (const lot of marks.keys()) each(lot, (tally) => (tally.lots += 1));
  for (const one of sentOut) each(one.lot, (tally) => tally.sent(one));
  for (const { lot, kind, quantity } of stillHere) {
    if (kind !== 'box' || quantity.isZero()) continue;
    each(lot, (tally) => (tally.boxesHere = tally.boxesHere.plus(quantity)));
  }
  return tallies
    .map((tally, index) => tally.size(asked[index] ?? ''))
    .sort(
      (a, b) =>
        b.boxes.comparedTo(a.boxes) ||
        b.pieces.comparedTo(a.pieces) ||
        b.customers - a.customers ||
        (a.lot < b.lot ? -1 : 1),
    );
};
