import {
  balanceAhead,
  type BatchAccount,
  type EndKind,
  type LotAccount,
  massBalance,
  type Portion,
  type ReachBalance,
  type SourceKind,
} from '../../domain/balance';
import { fromMilligrams } from '../../domain/provenance';
import { orRefuse } from '../../platform/problems';
import { Decimal } from '../../domain/units';
import { lossesAndDraws, type Subgraph } from './subgraph';
import type { DetailRows, LotRow } from './subgraph.rows';

const grams = (mg: number): Decimal => fromMilligrams(BigInt(mg));

/** What left a lot, or came to it, other than draws: in grams, or in its own unit. */
const entriesOf = (
  rows: DetailRows,
  amount: (mg: number, quantity: string) => Decimal,
): Map<number, { ends: Portion<EndKind>[]; gains: Portion<SourceKind>[] }> => {
  const entries = new Map<number, { ends: Portion<EndKind>[]; gains: Portion<SourceKind>[] }>();
  const of = (lot: number) => {
    const found = entries.get(lot) ?? { ends: [], gains: [] };
    entries.set(lot, found);
    return found;
  };
  for (const [lot, , customer, , , quantity, mg] of rows.dispatched ?? []) {
    of(lot).ends.push({
      kind: customer === null ? 'counter' : 'dispatched',
      massG: amount(mg, quantity),
    });
  }
  for (const [lot, kind, quantity, mg] of rows.moves ?? []) {
    const signed = amount(mg, quantity);
    if (kind === 'wasted' || kind === 'sampled')
      of(lot).ends.push({ kind, massG: signed.negated() });
    else if (kind === 'returned')
      of(lot).gains.push({ kind: 'returned-by-customer', massG: signed });
    else if (signed.isNegative()) {
      of(lot).ends.push({ kind: 'count-shortage', massG: signed.negated() });
    } else of(lot).gains.push({ kind: 'count-surplus', massG: signed });
  }
  return entries;
};

const onHand = (massG: Decimal): Portion<EndKind> => ({ kind: 'on-hand', massG });

/** Balance of some lots in grams, through all that was made from them. */
export const balanceOfGrams = (
  subgraph: Subgraph<DetailRows>,
  roots: readonly string[],
): ReachBalance => {
  const { rows, lots } = subgraph;
  const entries = entriesOf(rows, (mg) => grams(mg));
  const accounts = lots.map((row, number): LotAccount => {
    const { ends, gains } = entries.get(number) ?? { ends: [], gains: [] };
    return {
      lot: row[1],
      origin: row[3] === null ? 'received' : 'made',
      massG: grams(row[4]),
      ends: [onHand(grams(row[7])), ...ends],
      gains,
    };
  });
  const massOf = new Map(lots.map((row) => [row[1], grams(row[4])]));
  const batches = lossesAndDraws(rows).map((batch, number): BatchAccount => ({
    id: batch.id,
    open: rows.batches?.[number]?.[3] === 'open',
    draws: batch.draws.map(({ lot, mg }) => ({
      lot,
      massG: fromMilligrams(mg),
      quantity: new Decimal(0),
    })),
    losses: batch.losses.map((loss) => ({ ...loss, massG: fromMilligrams(loss.mg) })),
    outputs: batch.outputs.map((lot) => ({ lot, massG: massOf.get(lot) ?? new Decimal(0) })),
  }));
  return balanceAhead(orRefuse(subgraph.graph), roots, accounts, batches);
};

/** Balance of one lot of packaging in its own pieces: what was used stays counted as used. */
export const balanceOfPieces = (
  { rows, lots }: Subgraph<DetailRows>,
  root: LotRow,
): ReachBalance => {
  const number = lots.indexOf(root);
  const { ends = [], gains = [] } =
    entriesOf(rows, (_, quantity) => new Decimal(quantity)).get(number) ?? {};
  const used = (rows.draws ?? [])
    .filter(([, lot]) => lot === number)
    .map(([, , , quantity]): Portion<EndKind> => ({
      kind: 'used',
      massG: new Decimal(quantity ?? 0),
    }));
  const sources: Portion<SourceKind>[] = [
    { kind: root[3] === null ? 'received' : 'made', massG: new Decimal(root[5]) },
    ...gains,
  ];
  const balance = massBalance(sources, [onHand(new Decimal(root[6])), ...used, ...ends]);
  return { ...balance, overdrawn: balance.unexplainedG.isNegative() ? [root[1]] : [] };
};
