import {
  amountsBehind,
  gramsText,
  type LotGraph,
  milligramsOf,
  ratioText,
  sharesAhead,
  WHOLE,
} from '../../domain/provenance';
import type { Direction } from './subgraph.queries';
import type { LotRow } from './subgraph.rows';
import type { TracedLotView } from './trace.dto';

/** How much of the lots asked about is in each lot behind and ahead of them. */
export interface Shared {
  /** Exact grams of a lot in all roots together, times the fixed-point whole. */
  readonly behind: ReadonlyMap<string, bigint>;
  readonly ahead: ReadonlyMap<string, bigint>;
  readonly rootMg: bigint;
}

export const sharedOf = (
  graph: LotGraph,
  roots: readonly LotRow[],
  direction: Direction,
): Shared => {
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

export const sharedFields = (
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

/** Grams of the lots asked about in so much of a lot ahead; null where nothing is known of it. */
export const sharedIn = (
  shared: Shared | undefined,
  lot: string,
  massMg: number,
): string | null => {
  const share = shared?.ahead.get(lot);
  return share === undefined ? null : gramsText(milligramsOf(share, BigInt(massMg)));
};
