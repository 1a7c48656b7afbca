import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import type { ReadingsQuery, TakenReadingView } from './readings.dto';

const included = {
  place: { select: { name: true } },
  lot: { select: { code: true } },
  batch: { select: { code: true } },
  withdrawal: { select: { reason: true } },
} as const satisfies Prisma.ReadingInclude;

export type ReadingRow = Prisma.ReadingGetPayload<{ include: typeof included }>;

export const findReading = (tx: Tx, id: string): Promise<ReadingRow | null> =>
  tx.reading.findUnique({ where: { id }, include: included });

/** Newest first; `before` is the instant and id of the last row of the page before. */
export const listReadings = (
  tx: Tx,
  limit: number,
  query: ReadingsQuery,
  before: readonly string[] | undefined,
): Promise<ReadingRow[]> => {
  const [at, id] = before ?? [];
  return tx.reading.findMany({
    where: {
      ...(query.placeId === undefined ? {} : { placeId: query.placeId }),
      ...(query.lotCode === undefined ? {} : { lot: { code: query.lotCode } }),
      ...(query.measure === undefined ? {} : { measure: query.measure }),
      at: {
        ...(query.from === undefined ? {} : { gte: new Date(query.from) }),
        ...(query.to === undefined ? {} : { lte: new Date(query.to) }),
      },
      ...(at === undefined || id === undefined
        ? {}
        : { OR: [{ at: { lt: new Date(at) } }, { at: new Date(at), id: { lt: id } }] }),
    },
    include: included,
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    take: limit + 1,
  });
};

/** Codes of the lots that readings put on hold, by reading. */
export const heldByReading = async (
  tx: Tx,
  readingIds: readonly string[],
): Promise<ReadonlyMap<string, string[]>> => {
  const holds = await tx.hold.findMany({
    where: { causeId: { in: [...readingIds] } },
    select: { causeId: true, lot: { select: { code: true } } },
    orderBy: { lot: { code: 'asc' } },
  });
  const byReading = new Map<string, string[]>();
  for (const { causeId, lot } of holds) {
    const codes = byReading.get(causeId ?? '') ?? [];
    codes.push(lot.code);
    byReading.set(causeId ?? '', codes);
  }
  return byReading;
};

export const peopleNames = async (
  tx: Tx,
  ids: readonly string[],
): Promise<ReadonlyMap<string, string>> => {
  const people = await tx.user.findMany({
    where: { id: { in: [...new Set(ids)] } },
    select: { id: true, name: true },
  });
  return new Map(people.map(({ id, name }) => [id, name]));
};

export const readingViews = async (
  tx: Tx,
  rows: readonly ReadingRow[],
): Promise<TakenReadingView[]> => {
  const names = await peopleNames(
    tx,
    rows.map(({ userId }) => userId),
  );
  const held = await heldByReading(
    tx,
    rows.map(({ id }) => id),
  );
  return rows.map((row) => ({
    id: row.id,
    measure: row.measure,
    value: row.value.toFixed(),
    low: row.low?.toFixed() ?? null,
    high: row.high?.toFixed() ?? null,
    verdict: row.verdict,
    placeId: row.placeId,
    placeName: row.place?.name ?? null,
    lotCode: row.lot?.code ?? null,
    batchCode: row.batch?.code ?? null,
    step: row.step,
    instrument: row.instrument,
    correctiveAction: row.correctiveAction,
    reversesId: row.reversesId,
    withdrawnBecause: row.withdrawal?.reason ?? null,
    at: row.at.toISOString(),
    userName: names.get(row.userId) ?? '',
    heldLots: held.get(row.id) ?? [],
  }));
};
