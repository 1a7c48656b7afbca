import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { diary, type PaperLanguage } from '../../documents';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, RefusalError } from '../../platform/problems';
import { PaperContexts } from '../papers';
import { loadWorkshop } from '../workshop';
import { diaryEntries } from './diary-entries';
import type { Span } from './diary-sources';
import type {
  CleaningDto,
  CleaningView,
  DiaryDayView,
  DiaryPdfQuery,
  DiaryQuery,
  DiaryView,
} from './diary.dto';
import { DIARY_WORDS } from './diary.words';
import { say } from '../../domain/words/say';

/** A quarter: longer spans are asked for piece by piece. */
const MOST_DAYS = 92;

const spanOf = ({ from, to }: DiaryQuery, timeZone: string): Span => {
  const first = Temporal.PlainDate.from(from);
  const last = Temporal.PlainDate.from(to);
  const days = first.until(last).days + 1;
  if (days < 1 || days > MOST_DAYS) {
    throw new RefusalError({
      code: 'not-valid',
      detail: say`The diary is read from a day to the same or a later one, ${MOST_DAYS} days at most.`,
    });
  }
  const start = (day: Temporal.PlainDate): Date =>
    new Date(day.toZonedDateTime(timeZone).epochMilliseconds);
  return { from: start(first), until: start(last.add({ days: 1 })) };
};

/** The day-by-day record: readings, cleaning, mould checks, holds, and who did what. */
@Injectable()
export class DiaryService {
  constructor(
    private readonly transactions: Transactions,
    private readonly contexts: PaperContexts,
  ) {}

  read(query: DiaryQuery, language: PaperLanguage): Promise<DiaryView> {
    return this.transactions.read((tx) => this.view(tx, query, language));
  }

  pdf(query: DiaryPdfQuery): Promise<Buffer> {
    return this.transactions.read(async (tx) => {
      const context = await this.contexts.of(tx, query);
      return diary(await this.view(tx, query, context.language), context);
    });
  }

  clean(dto: CleaningDto): Promise<CleaningView> {
    return this.transactions.book(async (tx, by) => {
      const { placeId = null, tankId = null, what, note = null } = dto;
      const place =
        placeId === null
          ? null
          : orNotFound(await tx.place.findUnique({ where: { id: placeId } }), 'place', placeId);
      const tank =
        tankId === null
          ? null
          : orNotFound(await tx.tank.findUnique({ where: { id: tankId } }), 'tank', tankId);
      const { id } = await tx.cleaningRecord.create({
        data: { id: newId(), placeId, tankId, what, note, at: by.at, userId: by.userId },
      });
      noteInJournal(by, {
        action: 'cleaning.done',
        subjectKind: tank === null ? 'place' : 'tank',
        subjectId: place?.name ?? tank?.name ?? 'workshop',
        detail: { what },
      });
      const names = { placeName: place?.name ?? null, tankName: tank?.name ?? null };
      return { id, what, note, ...names, at: by.at.toISOString(), userName: by.userName };
    });
  }

  private async view(tx: Tx, query: DiaryQuery, language: PaperLanguage): Promise<DiaryView> {
    const { timeZone } = await loadWorkshop(tx);
    const entries = await diaryEntries(tx, spanOf(query, timeZone), DIARY_WORDS[language]);
    const days = new Map<string, DiaryDayView>();
    for (const { at, kind, subject, what, attention, userName } of entries) {
      const local = Temporal.Instant.fromEpochMilliseconds(at.getTime()).toZonedDateTimeISO(
        timeZone,
      );
      const day = local.toPlainDate().toString();
      const page = days.get(day) ?? { day, entries: [] };
      const time = local.toPlainTime().toString().slice(0, 5);
      page.entries.push({
        ...{ at: at.toISOString(), time, kind, subject },
        ...{ what, attention, userName },
      });
      days.set(day, page);
    }
    return { from: query.from, to: query.to, days: [...days.values()] };
  }
}
