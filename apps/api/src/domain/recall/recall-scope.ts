import { Decimal, roundTo, sum } from '../units';

/** One lot of a recall's scope, with where its goods were when the question was asked. */
export interface ScopeLot {
  readonly lot: string;
  readonly onHand: Decimal;
  readonly dispatched: Decimal;
  readonly counter: Decimal;
}

/** The scope as it was reviewed: it is kept as it stands, and later facts are shown beside it. */
export interface FrozenScope {
  readonly askedAt: string;
  readonly lots: readonly ScopeLot[];
}

export interface ScopeChange {
  readonly lot: string;
  readonly change: 'now-in-scope' | 'no-longer-in-scope' | 'quantity';
  readonly fields?: readonly {
    readonly field: 'onHand' | 'dispatched' | 'counter';
    readonly was: Decimal;
    readonly is: Decimal;
  }[];
}

const FIELDS = ['onHand', 'dispatched', 'counter'] as const;

/**
 * What was learned after a scope was frozen. A lot that has dropped out is listed too and stays in
 * the case: only a person takes a lot out of a recall.
 */
export const changeSinceFrozen = (
  frozen: FrozenScope,
  current: readonly ScopeLot[],
): ScopeChange[] => {
  const now = new Map(current.map((row) => [row.lot, row]));
  const then = new Map(frozen.lots.map((row) => [row.lot, row]));
  const changes: ScopeChange[] = current
    .filter((row) => !then.has(row.lot))
    .map((row) => ({ lot: row.lot, change: 'now-in-scope' }));
  for (const was of frozen.lots) {
    const is = now.get(was.lot);
    if (!is) {
      changes.push({ lot: was.lot, change: 'no-longer-in-scope' });
      continue;
    }
    const fields = FIELDS.filter((field) => !was[field].equals(is[field])).map((field) => ({
      field,
      was: was[field],
      is: is[field],
    }));
    if (fields.length > 0) changes.push({ lot: was.lot, change: 'quantity', fields });
  }
  return changes;
};

export interface Recovered {
  /** Absent: over the counter. */
  readonly customer?: string;
  readonly distributed: Decimal;
  readonly recovered: Decimal;
}

export interface Effectiveness {
  readonly distributed: Decimal;
  readonly recovered: Decimal;
  readonly outstanding: Decimal;
  /** Absent when nothing had been distributed. */
  readonly recoveredPercent?: Decimal;
  /** More came back than went out: a wrong count or a wrong lot, to be looked at. */
  readonly overRecovered: readonly string[];
  readonly notHeardFrom: readonly string[];
}

/** Name of all buyers over the counter together. */
export const COUNTER = 'counter';

/** Recovered ÷ distributed, and who has sent back nothing yet. */
export const effectiveness = (rows: readonly Recovered[]): Effectiveness => {
  const distributed = sum(rows.map((row) => row.distributed));
  const recovered = sum(rows.map((row) => row.recovered));
  const named = (row: Recovered): string => row.customer ?? COUNTER;
  const owed = rows.map((row) => Decimal.max(0, row.distributed.minus(row.recovered)));
  return {
    distributed,
    recovered,
    outstanding: sum(owed),
    ...(distributed.isZero()
      ? {}
      : { recoveredPercent: roundTo(recovered.times(100).dividedBy(distributed), 1) }),
    overRecovered: rows.filter((row) => row.recovered.greaterThan(row.distributed)).map(named),
    notHeardFrom: rows
      .filter((row) => row.recovered.isZero() && !row.distributed.isZero())
      .map(named),
  };
};
