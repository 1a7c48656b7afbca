import type { IngoingLot, IngoingMix } from '../../domain/declaration';
import { fromMilligrams, provenance, type LotGraph } from '../../domain/provenance';
import { parseSpecification, type Specification } from '../../domain/specification';
import { ZERO } from '../../domain/units';
import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { orRefuse } from '../../platform/problems';
import { loadSubgraph } from '../tracing';
import { leftoverRoles, type DrawnRole } from './leftovers.queries';

const withSpecification = {
  item: true,
  specification: { include: { allergens: true } },
} as const satisfies Prisma.LotInclude;

type ReceivedLot = Prisma.LotGetPayload<{ include: typeof withSpecification }>;

/** Null when nothing approved is pinned, or what is pinned can't be read as ingredients. */
export const pinnedSpecification = (stored: ReceivedLot['specification']): Specification | null => {
  if (!stored) return null;
  const parsed = parseSpecification({
    ingredient: stored.ingredients,
    allergens: Object.fromEntries(stored.allergens.map((row) => [row.allergen, row.presence])),
    composition: orNull(stored.composition),
    nutrition: orNull(stored.nutrition),
    statements: stored.statements,
  });
  return parsed.ok ? parsed.value : null;
};

/** Columns of drafts hold an empty object where nothing was stated. */
const orNull = (value: Prisma.JsonValue): Prisma.JsonValue =>
  typeof value === 'object' && value !== null && Object.keys(value).length > 0 ? value : null;

/** Received lots of food behind some lots: packaging is no ingredient. */
export const receivedLots = (tx: Tx, codes: readonly string[]): Promise<ReceivedLot[]> =>
  tx.lot.findMany({
    where: { code: { in: [...codes] }, batchId: null, item: { kind: { not: 'packaging' } } },
    include: withSpecification,
    orderBy: { code: 'asc' },
  });

export interface MadeMix {
  readonly mix: IngoingMix;
  /** Outer part of what was cast, when shells and caps were drawn as such. */
  readonly lotCodes: readonly string[];
}

/** What is really inside a lot, in grams of every received lot, from the graph of making. */
export const madeMix = async (tx: Tx, lot: { id: string; code: string }): Promise<IngoingMix> => {
  const subgraph = await loadSubgraph(tx, [lot.id], 'back');
  const graph = orRefuse(subgraph.graph);
  const codes = subgraph.lots.map((row) => row[1]);
  const received = await receivedLots(tx, codes);
  const root = subgraph.lots.find((row) => row[0] === lot.id);
  const finishedG = fromMilligrams(BigInt(root?.[4] ?? 0));
  const shares = new Map(provenance(graph, lot.code, finishedG).map((entry) => [entry.lot, entry]));
  const via = viaOf(graph, lot.code, await leftoverRoles(tx, codes));
  const lots = received.map((row): IngoingLot => {
    const share = shares.get(row.code);
    const self = row.code === lot.code;
    return {
      lotId: row.id,
      lotCode: row.code,
      itemId: row.itemId,
      itemName: row.item.name,
      ingoingG: self ? finishedG : (share?.ingoingG ?? ZERO),
      massG: self ? finishedG : (share?.massG ?? ZERO),
      processingAid: row.item.processingAid,
      specification: pinnedSpecification(row.specification),
      via: via.get(row.code) ?? 'draw',
    };
  });
  return { lots, finishedG };
};

/**
 * How each lot came in. What can be reached without passing a heel or rework was drawn on purpose;
 * the rest was left over in a tank or worked in again.
 */
export const viaOf = (
  graph: LotGraph,
  root: string,
  leftovers: ReadonlyMap<string, DrawnRole>,
): Map<string, IngoingLot['via']> => {
  const via = new Map<string, IngoingLot['via']>();
  const walk = (start: readonly string[], how: (from: string, to: string) => IngoingLot['via']) => {
    const queue = [...start];
    for (let code = queue.pop(); code !== undefined; code = queue.pop()) {
      const batch = graph.batches[graph.madeBy.get(code) ?? -1];
      for (const source of batch?.lots ?? []) {
        const found = how(code, source);
        const before = via.get(source);
        if (before === undefined || (before !== 'draw' && found === 'draw')) {
          via.set(source, found);
          queue.push(source);
        }
      }
    }
  };
  const role = (from: string, to: string): IngoingLot['via'] => {
    const own = leftovers.get(`${from} ${to}`) ?? 'draw';
    return own === 'draw' ? (via.get(from) ?? 'draw') : own;
  };
  walk([root], role);
  return via;
};
