import type { Tx } from '../../platform/database/prisma';
import type { DiaryEntryView } from './diary.dto';
import { type DiaryWords, WORK_ACTIONS } from './diary.words';
import { peopleNames } from './readings.repository';

/** Half-open: from the first instant of the first day up to that of the day after the last. */
export interface Span {
  readonly from: Date;
  readonly until: Date;
}

/** An entry before its people have names and its instant a day. */
export interface RawEntry extends Omit<DiaryEntryView, 'at' | 'time' | 'userName'> {
  readonly at: Date;
  readonly userId: string | null;
  readonly userName?: string;
}

const within = ({ from, until }: Span) => ({ gte: from, lt: until });

const joined = (...parts: readonly (string | null | undefined)[]): string =>
  parts.filter((part) => part !== null && part !== undefined && part !== '').join(': ');

const readings = async (tx: Tx, span: Span, words: DiaryWords): Promise<RawEntry[]> => {
  const rows = await tx.reading.findMany({
    where: { at: within(span) },
    include: {
      place: { select: { name: true } },
      lot: { select: { code: true, item: { select: { name: true } } } },
      batch: { select: { code: true } },
    },
  });
  return rows.map((row) => {
    const figure = `${row.value.toFixed()} ${words.measures[row.measure] ?? row.measure}`;
    const limits = words.limits(row.low?.toFixed() ?? null, row.high?.toFixed() ?? null);
    const corrects = row.reversesId === null ? '' : ` – ${words.corrects}`;
    const lot = row.lot === null ? undefined : `${row.lot.code} ${row.lot.item.name}`;
    return {
      at: row.at,
      kind: 'reading',
      subject: joined(row.place?.name ?? lot ?? row.batch?.code, row.step),
      what: joined(`${figure}${limits}${corrects}`, row.correctiveAction),
      attention: row.verdict === 'low' || row.verdict === 'high',
      userId: row.userId,
    };
  });
};

const cleanings = async (tx: Tx, span: Span, words: DiaryWords): Promise<RawEntry[]> => {
  const rows = await tx.cleaningRecord.findMany({ where: { at: within(span) } });
  const places = await tx.place.findMany({
    where: { id: { in: rows.flatMap(({ placeId }) => placeId ?? []) } },
  });
  const tanks = await tx.tank.findMany({
    where: { id: { in: rows.flatMap(({ tankId }) => tankId ?? []) } },
  });
  const names = new Map([...places, ...tanks].map(({ id, name }) => [id, name]));
  return rows.map((row) => ({
    at: row.at,
    kind: 'cleaning',
    subject: names.get(row.placeId ?? row.tankId ?? '') ?? words.everywhere,
    what: joined(row.what, row.note),
    attention: false,
    userId: row.userId,
  }));
};

const mouldChecks = async (tx: Tx, span: Span, words: DiaryWords): Promise<RawEntry[]> => {
  const rows = await tx.mouldInspection.findMany({
    where: { at: within(span) },
    include: { mould: { include: { design: { select: { name: true } } } } },
  });
  return rows.map((row) => ({
    at: row.at,
    kind: 'mould',
    subject: `${row.mould.tag} ${row.mould.design.name}`,
    what: joined(words.mould[row.result] ?? row.result, row.note),
    attention: row.result === 'chipped',
    userId: row.userId,
  }));
};

const tankEmptyings = async (tx: Tx, span: Span, words: DiaryWords): Promise<RawEntry[]> => {
  const rows = await tx.tankEmptying.findMany({
    where: { at: within(span) },
    include: { tank: { select: { name: true } } },
  });
  return rows.map((row) => ({
    at: row.at,
    kind: 'tank',
    subject: row.tank.name,
    what: joined(
      `${row.cleaned ? words.clean : words.notClean}, ${words.heel[row.outcome] ?? row.outcome}`,
      row.note,
    ),
    attention: !row.cleaned,
    userId: row.userId,
  }));
};

const holds = async (tx: Tx, span: Span): Promise<RawEntry[]> => {
  const rows = await tx.hold.findMany({
    where: { OR: [{ placedAt: within(span) }, { releasedAt: within(span) }] },
    include: { lot: { select: { code: true, item: { select: { name: true } } } } },
  });
  const isIn = (at: Date): boolean => at >= span.from && at < span.until;
  return rows.flatMap((row): RawEntry[] => {
    const subject = `${row.lot.code} ${row.lot.item.name}`;
    const placed: RawEntry = {
      at: row.placedAt,
      kind: 'hold',
      subject,
      what: row.reason,
      attention: true,
      userId: row.placedById,
    };
    const released: RawEntry[] =
      row.releasedAt === null || !isIn(row.releasedAt)
        ? []
        : [
            {
              at: row.releasedAt,
              kind: 'release',
              subject,
              what: row.releaseReason ?? '',
              attention: false,
              userId: row.releasedById,
            },
          ];
    return [...(isIn(row.placedAt) ? [placed] : []), ...released];
  });
};

const work = async (tx: Tx, span: Span, words: DiaryWords): Promise<RawEntry[]> => {
  const rows = await tx.journalEntry.findMany({
    where: { at: within(span), action: { in: WORK_ACTIONS } },
  });
  return rows.map((row) => ({
    at: row.at,
    kind: 'work',
    subject: row.subjectId,
    what: words.actions[row.action] ?? row.action,
    attention: false,
    userId: row.userId,
    userName: row.userName,
  }));
};

/** Everything that was recorded in a span, in the order in which it happened. */
export const diaryEntries = async (
  tx: Tx,
  span: Span,
  words: DiaryWords,
): Promise<(RawEntry & { readonly userName: string })[]> => {
  const entries = [
    ...(await readings(tx, span, words)),
    ...(await cleanings(tx, span, words)),
    ...(await mouldChecks(tx, span, words)),
    ...(await tankEmptyings(tx, span, words)),
    ...(await holds(tx, span)),
    ...(await work(tx, span, words)),
  ];
  const names = await peopleNames(
    tx,
    entries.flatMap(({ userId }) => userId ?? []),
  );
  return entries
    .map((entry) => ({ ...entry, userName: entry.userName ?? names.get(entry.userId ?? '') ?? '' }))
    .sort((a, b) => a.at.getTime() - b.at.getTime());
};
