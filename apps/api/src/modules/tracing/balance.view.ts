import type { BalanceLine } from '../../domain/balance';
import { balanceOfGrams, balanceOfPieces } from './balance';
import type { BalanceLineView, BalanceView } from './provenance.dto';
import type { Subgraph } from './subgraph';
import type { DetailRows } from './subgraph.rows';

const lineView = (line: BalanceLine): BalanceLineView => ({
  kind: line.kind,
  note: line.note ?? null,
  quantity: line.massG.toFixed(3),
  percent: line.percent.toFixed(2),
});

/** Grams of food, or pieces where the lot has no weight of food. */
export const balanceView = (
  subgraph: Subgraph<DetailRows>,
  code: string,
  askedAt: Date,
): BalanceView => {
  const root = subgraph.lots.find((row) => row[1] === code);
  const byPieces = root?.[4] === 0;
  const balance = byPieces ? balanceOfPieces(subgraph, root) : balanceOfGrams(subgraph, [code]);
  return {
    lot: code,
    askedAt: askedAt.toISOString(),
    unit: byPieces ? 'pc' : 'g',
    state: balance.state,
    sourceQuantity: balance.sourceG.toFixed(3),
    unexplainedQuantity: balance.unexplainedG.toFixed(3),
    accountedPercent: balance.accountedPercent.toFixed(2),
    sources: balance.sources.map(lineView),
    ends: balance.ends.map(lineView),
    named: balance.named.map(lineView),
    overdrawn: [...balance.overdrawn],
  };
};
