import type { Batch } from '../provenance/batch-weights';
import { toMilligrams } from '../provenance/fixed-point';
import type { LotGraph } from '../provenance/graph';
import { sharesAhead, type Shares } from '../provenance/shares';
import { Decimal, sum } from '../units';
import {
  massBalance,
  type EndKind,
  type MassBalance,
  type Portion,
  type SourceKind,
} from './mass-balance';

export interface LotAccount {
  readonly lot: string;
  readonly origin: 'received' | 'made';
  /** What was received or made. */
  readonly massG: Decimal;
  /** Every way the lot left or stays, other than being drawn. */
  readonly ends: readonly Portion<EndKind>[];
  /** What came to it after its origin: returns of customers, a count that found more. */
  readonly gains: readonly Portion<SourceKind>[];
}

export interface BatchAccount extends Batch {
  /** What an open batch has drawn and not yet given out is still in it. */
  readonly open: boolean;
}

export interface ReachBalance extends MassBalance {
  /** Lots whose own entries give out more than they ever held: the reason of `more-out-than-in`. */
  readonly overdrawn: readonly string[];
}

interface Books {
  readonly shares: Shares;
  readonly sources: Portion<SourceKind>[];
  readonly ends: Portion<EndKind>[];
  readonly overdrawn: string[];
}

const signed = (books: Books, overG: Decimal, share: bigint, note: string): void => {
  if (overG.isZero()) return;
  if (overG.isPositive()) books.ends.push({ kind: 'shortfall', massG: overG, share, note });
  else books.sources.push({ kind: 'gain', massG: overG.negated(), share, note });
};

/** Books what a reached batch did not pass on: losses, and what its own record leaves open. */
const bookBatch = (books: Books, batch: BatchAccount, roots: ReadonlySet<string>): void => {
  const reached = batch.draws.filter((draw) => books.shares.has(draw.lot));
  if (reached.length === 0) return;
  const shareOf = (lot: string): bigint => books.shares.get(lot) ?? 0n;
  const drawn = sum(batch.draws.map((draw) => draw.massG));
  const named = batch.losses.filter((loss) => loss.lot !== undefined);
  const mixG = drawn.minus(sum(named.map((loss) => loss.massG)));
  let weighed = 0n;
  for (const draw of reached) weighed += shareOf(draw.lot) * toMilligrams(draw.massG);
  for (const loss of named) weighed -= shareOf(loss.lot ?? '') * toMilligrams(loss.massG);
  const mixShare = mixG.isPositive() && !mixG.isZero() ? weighed / toMilligrams(mixG) : 0n;
  let passedOn = new Decimal(0);
  for (const loss of batch.losses) {
    const share = loss.lot === undefined ? mixShare : shareOf(loss.lot);
    books.ends.push({ kind: 'loss', massG: loss.massG, share, note: loss.kind });
    if (loss.lot === undefined) passedOn = passedOn.plus(loss.massG);
  }
  for (const output of batch.outputs) {
    passedOn = passedOn.plus(output.massG);
    if (!roots.has(output.lot)) continue;
    const { massG } = output;
    books.ends.push({ kind: 'inside-asked-lot', massG, share: mixShare, note: output.lot });
  }
  const left = mixG.minus(passedOn);
  if (batch.open && left.isPositive()) {
    books.ends.push({ kind: 'open-batch', massG: left, share: mixShare, note: batch.id });
  } else {
    signed(books, left, mixShare, batch.id);
  }
};

const bookLot = (books: Books, account: LotAccount, drawnG: Decimal): void => {
  const share = books.shares.get(account.lot);
  if (share === undefined) return;
  let left = account.massG.minus(drawnG);
  for (const gain of account.gains) {
    left = left.plus(gain.massG);
    books.sources.push({ ...gain, share });
  }
  for (const end of account.ends) {
    left = left.minus(end.massG);
    books.ends.push({ ...end, share });
  }
  if (left.isNegative()) books.overdrawn.push(account.lot);
  // Pieces whose weight isn't a whole number of milligrams leave a rest here; so does a lost entry.
  else signed(books, left, share, account.lot);
};

/**
 * Mass balance of some lots through everything that was made from them: sources of the asked lots,
 * ends of each lot in reach by its share, losses of each batch by its mix.
 */
export const balanceAhead = (
  graph: LotGraph,
  roots: readonly string[],
  lots: readonly LotAccount[],
  batches: readonly BatchAccount[],
): ReachBalance => {
  const books: Books = { shares: sharesAhead(graph, roots), sources: [], ends: [], overdrawn: [] };
  const asked = new Set(roots);
  const drawn = new Map<string, Decimal>();
  for (const batch of batches) {
    for (const draw of batch.draws) {
      drawn.set(draw.lot, (drawn.get(draw.lot) ?? new Decimal(0)).plus(draw.massG));
    }
    bookBatch(books, batch, asked);
  }
  for (const account of lots) {
    if (asked.has(account.lot)) {
      books.sources.push({ kind: account.origin, massG: account.massG, note: account.lot });
    }
    bookLot(books, account, drawn.get(account.lot) ?? new Decimal(0));
  }
  return { ...massBalance(books.sources, books.ends), overdrawn: books.overdrawn };
};
