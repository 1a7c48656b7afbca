import {
  type BatchInMilligrams,
  lotGraphInMilligrams,
  type LotGraph,
  type ProvenanceRefusal,
} from '../../domain/provenance';
import type { Result } from '../../domain/refusals';
import type { Tx } from '../../platform/database/prisma';
import { type Direction, type From, subgraphQuery } from './subgraph.queries';
import { SUBGRAPH_DETAILS } from './subgraph-details.queries';
import type { DetailRows, LotRow, SubgraphRows } from './subgraph.rows';

/** Every batch's draws, losses and made lots, lots by code. */
export interface Subgraph<Rows extends SubgraphRows = SubgraphRows> {
  readonly rows: Rows;
  readonly lots: readonly LotRow[];
  /** Refused when the record itself is faulty: reach is known all the same, shares are not. */
  readonly graph: Result<LotGraph, ProvenanceRefusal>;
}

const VOLATILE = new Set(['steam']);

/** Stands for all lots that a batch drew and that no direction reached. */
const elsewhere = (batch: string): string => `${batch} (others)`;

interface BatchBooks extends BatchInMilligrams {
  readonly draws: { lot: string; mg: bigint }[];
  readonly losses: { kind: string; mg: bigint; lot?: string; volatile: boolean }[];
  readonly outputs: string[];
}

type CodeOf = (lot: number | null, batch: string) => string;

const addDraws = (books: readonly BatchBooks[], rows: SubgraphRows, codeOf: CodeOf): void => {
  for (const [number, lot, mg] of rows.draws ?? []) {
    const batch = books[number];
    if (batch) batch.draws.push({ lot: codeOf(lot, batch.id), mg: BigInt(mg) });
  }
};

/** A tank's lot before is behind its next one with no weight of its own, unless it was weighed in. */
const addHeels = (books: readonly BatchBooks[], rows: SubgraphRows, codeOf: CodeOf): void => {
  for (const [number, lot] of rows.heels ?? []) {
    const batch = books[number];
    if (!batch) continue;
    const heel = codeOf(lot, batch.id);
    if (batch.draws.some((draw) => draw.lot === heel)) continue;
    batch.draws.push({ lot: heel, mg: 0n });
  }
};

const addLosses = (books: readonly BatchBooks[], rows: SubgraphRows, codeOf: CodeOf): void => {
  for (const [number, lot, ofLot, kind, mg] of rows.losses ?? []) {
    const batch = books[number];
    if (!batch) continue;
    const loss = { kind, mg: BigInt(mg), volatile: VOLATILE.has(kind) };
    batch.losses.push(ofLot ? { ...loss, lot: codeOf(lot, batch.id) } : loss);
  }
};

/** Each batch's draws, losses and made lots, in the order of the rows. */
export const lossesAndDraws = (rows: SubgraphRows): BatchBooks[] => {
  const lots = rows.lots ?? [];
  const books = (rows.batches ?? []).map((row): BatchBooks => ({
    id: row[1],
    draws: [],
    losses: [],
    outputs: [],
  }));
  const codeOf: CodeOf = (number, batch) =>
    (number === null ? undefined : lots[number]?.[1]) ?? elsewhere(batch);
  for (const row of lots) if (row[3] !== null) books[row[3]]?.outputs.push(row[1]);
  addDraws(books, rows, codeOf);
  addHeels(books, rows, codeOf);
  addLosses(books, rows, codeOf);
  return books;
};

const load = async (
  tx: Tx,
  from: From,
  direction: Direction,
  detailed: boolean,
): Promise<SubgraphRows> => {
  const query = subgraphQuery(from, direction, detailed ? SUBGRAPH_DETAILS : undefined);
  const [row] = await tx.$queryRaw<[{ subgraph: string }]>(query);
  return JSON.parse(row.subgraph) as SubgraphRows;
};

const subgraphOf = <Rows extends SubgraphRows>(rows: Rows): Subgraph<Rows> => ({
  rows,
  lots: rows.lots ?? [],
  graph: lotGraphInMilligrams(lossesAndDraws(rows)),
});

/** The graph behind or ahead of some lots (ids), for provenance, labels, dates and costs. */
export const loadSubgraph = async (tx: Tx, from: From, direction: Direction): Promise<Subgraph> =>
  subgraphOf(await load(tx, from, direction, false));

/** The same with names, origins, ends, holds and failed readings. */
export const loadDetailedSubgraph = async (
  tx: Tx,
  from: From,
  direction: Direction,
): Promise<Subgraph<DetailRows>> =>
  subgraphOf((await load(tx, from, direction, true)) as DetailRows);
