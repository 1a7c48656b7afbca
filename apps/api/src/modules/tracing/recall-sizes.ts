import { type RecallSize, recallSizes, type SentOut, type StillHere } from '../../domain/split';
import { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import { orRefuse } from '../../platform/problems';
import type { RecallSizesQuery, RecallSizesView, RecallSizeView } from './recall-sizes.dto';
import { loadDetailedSubgraph, type Subgraph } from './subgraph';
import type { DetailRows } from './subgraph.rows';
import { say } from '../../domain/words/say';

const MOST_LOTS = 1000;
const DAYS = 120;

/** Received lots of food that are on hand or came in not long ago, the latest first. */
const lotsToAsk = async (tx: Tx, query: RecallSizesQuery, now: Date): Promise<string[]> => {
  const since = new Date(now.getTime() - (query.days ?? DAYS) * 86_400_000);
  const lots = await tx.lot.findMany({
    where: {
      deliveryLineId: { not: null },
      item: { kind: 'ingredient', ...(query.item === undefined ? {} : { id: query.item }) },
      OR: [{ createdAt: { gte: since } }, { onHandQuantity: { gt: 0 } }],
    },
    select: { id: true },
    orderBy: { createdAt: 'desc' },
    take: MOST_LOTS + 1,
  });
  return lots.map((lot) => lot.id);
};

const kindOf = ({ rows, lots }: Subgraph<DetailRows>, number: number): SentOut['kind'] => {
  const kind = rows.items?.[lots[number]?.[2] ?? '']?.[1];
  return kind === 'box' || kind === 'piece' ? kind : 'other';
};

const sentOut = (subgraph: Subgraph<DetailRows>): SentOut[] =>
  (subgraph.rows.dispatched ?? []).map((row) => ({
    lot: subgraph.lots[row[0]]?.[1] ?? '',
    kind: kindOf(subgraph, row[0]),
    quantity: new Decimal(row[5]).minus(row[7]),
    ...(row[2] === null ? {} : { customer: row[2] }),
  }));

const stillHere = (subgraph: Subgraph<DetailRows>): StillHere[] =>
  subgraph.lots.map((row, number) => ({
    lot: row[1],
    kind: kindOf(subgraph, number),
    quantity: new Decimal(row[6]),
  }));

const sizeView = (
  { rows, lots }: Subgraph<DetailRows>,
  numberOf: ReadonlyMap<string, number>,
  originOf: ReadonlyMap<number, NonNullable<DetailRows['received']>[number]>,
  size: RecallSize,
): RecallSizeView => {
  const number = numberOf.get(size.lot) ?? -1;
  const origin = originOf.get(number);
  return {
    lot: size.lot,
    itemName: rows.items?.[lots[number]?.[2] ?? '']?.[0] ?? '',
    supplier: origin?.[1] ?? null,
    supplierLotCode: origin?.[2] ?? null,
    receivedOn: origin?.[4] ?? null,
    lots: size.lots,
    boxes: size.boxes.toFixed(3),
    pieces: size.pieces.toFixed(3),
    overTheCounter: size.overTheCounter.toFixed(3),
    customers: size.customers,
    boxesHere: size.boxesHere.toFixed(3),
  };
};

/** How large a recall of each ingredient lot alone would be, by one walk ahead from all of them. */
export const recallSizesOf = async (
  tx: Tx,
  query: RecallSizesQuery,
  now: Date,
): Promise<RecallSizesView> => {
  const found = await lotsToAsk(tx, query, now);
  const ids = found.slice(0, MOST_LOTS);
  const subgraph = await loadDetailedSubgraph(tx, ids, 'forward');
  const asked = new Set(ids);
  const codes = subgraph.lots.filter((row) => asked.has(row[0])).map((row) => row[1]);
  const numberOf = new Map(subgraph.lots.map((row, number) => [row[1], number]));
  const originOf = new Map((subgraph.rows.received ?? []).map((row) => [row[0], row]));
  const graph = orRefuse(subgraph.graph);
  return {
    askedAt: now.toISOString(),
    leftOut:
      found.length > MOST_LOTS
        ? say`Only the latest ${MOST_LOTS} lots are shown. Ask for fewer days or one item.`
        : null,
    sizes: recallSizes(graph, codes, sentOut(subgraph), stillHere(subgraph)).map((size) =>
      sizeView(subgraph, numberOf, originOf, size),
    ),
  };
};
