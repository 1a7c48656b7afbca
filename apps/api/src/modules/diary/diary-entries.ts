import type { Tx } from '../../platform/database/prisma';
import {
  cleanings,
  mouldChecks,
  readings,
  tankEmptyings,
  within,
  type RawEntry,
  type Span,
} from './diary-sources';
import { work } from './diary-work';
import type { DiaryWords } from './diary.words';
import { peopleNames } from './readings.repository';

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
