import { FRACTION_BITS, fromMilligrams, toMilligrams, WHOLE } from '../provenance/fixed-point';
import { Decimal, roundTo } from '../units';
import { nearestMg, NOTHING, settle } from './settle';

/** Where the asked goods came from. */
export type SourceKind = 'received' | 'made' | 'returned-by-customer' | 'count-surplus' | 'gain';

/** Where they are now, or how they left. */
export type EndKind =
  | 'dispatched'
  | 'counter'
  | 'on-hand'
  | 'open-batch'
  | 'wasted'
  | 'sampled'
  | 'returned-to-supplier'
  | 'used'
  | 'loss'
  | 'count-shortage'
  | 'shortfall'
  | 'inside-asked-lot';

/** A share of a weight: all of it unless `share` (fixed point, see provenance) says less. */
export interface Portion<Kind extends string> {
  readonly kind: Kind;
  readonly massG: Decimal;
  readonly share?: bigint;
  /** A further word that keeps lines apart: the kind of a loss, a lot, a batch. */
  readonly note?: string;
}

export interface BalanceLine {
  readonly kind: SourceKind | EndKind | 'unexplained';
  readonly note?: string;
  readonly massG: Decimal;
  /** Of all sources. Two places; the weights, not these, are what sums. */
  readonly percent: Decimal;
}

export interface MassBalance {
  readonly sources: readonly BalanceLine[];
  readonly ends: readonly BalanceLine[];
  readonly sourceG: Decimal;
  /** Sources less ends; with it the printed ends sum to the sources to the milligram. */
  readonly unexplainedG: Decimal;
  readonly accountedPercent: Decimal;
  /** Count differences, gains and shortfalls: in the lines above, and each to be looked at. */
  readonly named: readonly BalanceLine[];
  readonly state: 'balanced' | 'difference-named' | 'difference-unexplained' | 'more-out-than-in';
}

const NAMED = new Set<string>(['count-surplus', 'count-shortage', 'gain', 'shortfall']);

interface Total<Kind> {
  readonly kind: Kind;
  readonly note?: string;
  exact: bigint;
}

const totals = <Kind extends string>(portions: Iterable<Portion<Kind>>): Total<Kind>[] => {
  const byLine = new Map<string, Total<Kind>>();
  for (const { kind, massG, share = WHOLE, note } of portions) {
    const key = `${kind}\u0000${note ?? ''}`;
    const line = byLine.get(key) ?? { kind, ...(note === undefined ? {} : { note }), exact: 0n };
    line.exact += toMilligrams(massG) * share;
    byLine.set(key, line);
  }
  return [...byLine.values()].filter((line) => line.exact !== 0n);
};

const sumExact = (lines: readonly { readonly exact: bigint }[]): bigint =>
  lines.reduce((running, line) => running + line.exact, 0n);

const percentOf = (mg: bigint, wholeMg: bigint): Decimal =>
  wholeMg === 0n
    ? new Decimal(0)
    : roundTo(new Decimal(mg.toString()).times(100).dividedBy(wholeMg.toString()), 2);

const print = <Kind extends BalanceLine['kind']>(
  lines: readonly Total<Kind>[],
  mgs: readonly bigint[],
  wholeMg: bigint,
): BalanceLine[] =>
  lines.map(({ kind, note }, index) => ({
    kind,
    ...(note === undefined ? {} : { note }),
    massG: fromMilligrams(mgs[index] ?? 0n),
    percent: percentOf(mgs[index] ?? 0n, wholeMg),
  }));

const stateOf = (
  unexplained: bigint,
  tolerance: bigint,
  named: readonly BalanceLine[],
): MassBalance['state'] => {
  if (unexplained < -tolerance) return 'more-out-than-in';
  if (unexplained > tolerance) return 'difference-unexplained';
  return named.length > 0 ? 'difference-named' : 'balanced';
};

/**
 * Sets all sources of some goods against all their ends, to the milligram. Nothing is forced to
 * fit: what the ends leave open is `unexplainedG`, negative when more went out than came in.
 */
export const massBalance = (
  sources: Iterable<Portion<SourceKind>>,
  ends: Iterable<Portion<EndKind>>,
  toleranceG: Decimal = new Decimal(0),
): MassBalance => {
  const sourceTotals = totals(sources);
  const endTotals = totals(ends);
  const inExact = sumExact(sourceTotals);
  const open = inExact - sumExact(endTotals);
  const unexplained = open > -NOTHING && open < NOTHING ? 0n : open;
  const wholeMg = nearestMg(inExact);
  const unexplainedMg = nearestMg(unexplained);
  const sourceMgs = settle(
    sourceTotals.map((line) => line.exact),
    wholeMg,
  );
  const endMgs = settle(
    endTotals.map((line) => line.exact),
    wholeMg - unexplainedMg,
  );
  const sourceLines = print(sourceTotals, sourceMgs, wholeMg);
  const endLines = print(endTotals, endMgs, wholeMg);
  const named = [...sourceLines, ...endLines].filter((line) => NAMED.has(line.kind));
  const tolerance = toMilligrams(toleranceG) << FRACTION_BITS;
  return {
    sources: sourceLines,
    ends: endLines,
    sourceG: fromMilligrams(wholeMg),
    unexplainedG: fromMilligrams(unexplainedMg),
    accountedPercent: percentOf(wholeMg - unexplainedMg, wholeMg),
    named,
    state: stateOf(unexplained, tolerance, named),
  };
};
