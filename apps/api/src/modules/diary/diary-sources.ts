import { colonIn, figureIn } from '../../domain/words/numbers';
import type { Tx } from '../../platform/database/prisma';
import type { DiaryEntryView } from './diary.dto';
import type { DiaryWords } from './diary.words';

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

export const within = ({ from, until }: Span) => ({ gte: from, lt: until });

/** The parts that are there, with the colons of the language. */
export const joined = (
  { language }: DiaryWords,
  ...parts: readonly (string | null | undefined)[]
): string =>
  parts
    .filter((part) => part !== null && part !== undefined && part !== '')
    .join(`${colonIn(language)} `);

export const readings = async (tx: Tx, span: Span, words: DiaryWords): Promise<RawEntry[]> => {
  const rows = await tx.reading.findMany({
    where: { at: within(span) },
    include: {
      place: { select: { name: true } },
      lot: { select: { code: true, item: { select: { name: true } } } },
      batch: { select: { code: true } },
      withdrawal: { select: { reason: true } },
    },
  });
  const figureOf = (value: { toFixed(): string }): string =>
    figureIn(value.toFixed(), words.language);
  return rows.map((row) => {
    const figure = `${figureOf(row.value)} ${words.measures[row.measure] ?? row.measure}`;
    const limits = words.limits(row.low && figureOf(row.low), row.high && figureOf(row.high));
    const corrects = row.reversesId === null ? '' : ` – ${words.corrects}`;
    const wrong =
      row.withdrawal === null ? '' : ` – ${joined(words, words.wrong, row.withdrawal.reason)}`;
    const lot = row.lot === null ? undefined : `${row.lot.code} ${row.lot.item.name}`;
    return {
      at: row.at,
      kind: 'reading',
      subject: joined(words, row.place?.name ?? lot ?? row.batch?.code, row.step),
      what: joined(words, `${figure}${limits}${corrects}${wrong}`, row.correctiveAction),
      attention: row.verdict === 'low' || row.verdict === 'high',
      userId: row.userId,
    };
  });
};

export const cleanings = async (tx: Tx, span: Span, words: DiaryWords): Promise<RawEntry[]> => {
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
    what: joined(words, row.what, row.note),
    attention: false,
    userId: row.userId,
  }));
};

export const mouldChecks = async (tx: Tx, span: Span, words: DiaryWords): Promise<RawEntry[]> => {
  const rows = await tx.mouldInspection.findMany({
    where: { at: within(span) },
    include: { mould: { include: { design: { select: { name: true } } } } },
  });
  return rows.map((row) => ({
    at: row.at,
    kind: 'mould',
    subject: `${row.mould.tag} ${row.mould.design.name}`,
    what: joined(words, words.mould[row.result] ?? row.result, row.note),
    attention: row.result === 'chipped',
    userId: row.userId,
  }));
};

export const tankEmptyings = async (tx: Tx, span: Span, words: DiaryWords): Promise<RawEntry[]> => {
  const rows = await tx.tankEmptying.findMany({
    where: { at: within(span) },
    include: { tank: { select: { name: true } } },
  });
  return rows.map((row) => ({
    at: row.at,
    kind: 'tank',
    subject: row.tank.name,
    what: joined(
      words,
      `${row.cleaned ? words.clean : words.notClean}, ${words.heel[row.outcome] ?? row.outcome}`,
      row.note,
    ),
    attention: !row.cleaned,
    userId: row.userId,
  }));
};
