import type { Specification } from '../../domain/specification';
import type { Tx } from '../../platform/database/prisma';
import { loadSubgraph } from '../tracing';
import { pinnedSpecification, receivedLots } from './made-mix';

/** What stands behind some lots: one entry per received lot of food, null when it isn't specified. */
export const specificationsBehind = async (
  tx: Tx,
  lotIds: readonly string[],
): Promise<(Specification | null)[]> => {
  const subgraph = await loadSubgraph(tx, lotIds, 'back');
  const received = await receivedLots(
    tx,
    subgraph.lots.map((row) => row[1]),
  );
  return received.map((row) => pinnedSpecification(row.specification));
};
