import { Injectable } from '@nestjs/common';
import { judge, type Verdict } from '../../domain/making';
import { Decimal } from '../../domain/units';
import type { Place } from '../../generated/prisma/client';
import { Clock } from '../../platform/clock/clock';
import { DatabaseService } from '../../platform/database/database.service';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { decodeCursor, encodeCursor, limitOf, type Page } from '../../platform/paging/page';
import { orNotFound, RefusalError, refuseImpossible } from '../../platform/problems';
import { holdLotsOf, limitsOf } from './place-limits';
import type {
  ReadingDueView,
  ReadingsQuery,
  TakenReadingView,
  TakeReadingDto,
} from './readings.dto';
import { findReading, listReadings, readingViews } from './readings.repository';
import { say } from '../../domain/words/say';

const HOUR_MS = 3_600_000;

const isOut = (verdict: Verdict): boolean => verdict === 'low' || verdict === 'high';

/** Readings of places and lots; those of a batch are taken at the batch. */
@Injectable()
export class ReadingsService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
  ) {}

  list(query: ReadingsQuery): Promise<Page<TakenReadingView>> {
    return this.transactions.read(async (tx) => {
      const limit = limitOf(query);
      const rows = await listReadings(tx, limit, query, decodeCursor(query.after, 2));
      const shown = rows.slice(0, limit);
      const last = shown[shown.length - 1];
      const more = rows.length > limit && last !== undefined;
      return {
        items: await readingViews(tx, shown),
        next: more ? encodeCursor([last.at.toISOString(), last.id]) : null,
      };
    });
  }

  take(dto: TakeReadingDto): Promise<TakenReadingView> {
    refuseImpossible([{ pointer: '/value', ...dto }]);
    return this.transactions.book(async (tx, by) => {
      const subject = await this.subjectOf(tx, dto);
      const limits = limitsOf(subject.place, dto.measure);
      const verdict = judge(new Decimal(dto.value), limits);
      const { id } = await tx.reading.create({
        data: {
          id: newId(),
          measure: dto.measure,
          value: dto.value,
          low: limits.low?.toFixed() ?? null,
          high: limits.high?.toFixed() ?? null,
          verdict,
          placeId: subject.place?.id ?? null,
          lotId: subject.lotId,
          instrument: dto.instrument ?? null,
          correctiveAction: dto.correctiveAction ?? null,
          reversesId: dto.reversesId ?? null,
          at: by.at,
          userId: by.userId,
        },
      });
      if (dto.holdLots === true && isOut(verdict) && subject.place !== null) {
        await holdLotsOf(tx, by, subject.place, { id, dto });
      }
      noteInJournal(by, {
        action: 'reading.taken',
        subjectKind: subject.place === null ? 'lot' : 'place',
        subjectId: subject.name,
        detail: { measure: dto.measure, value: dto.value, verdict },
      });
      const [view] = await readingViews(tx, [orNotFound(await findReading(tx, id), 'reading', id)]);
      return orNotFound(view, 'reading', id);
    });
  }

  /** Places whose readings are asked for, the most overdue first. */
  async due(): Promise<ReadingDueView[]> {
    const now = this.clock.now();
    const places = await this.database.client.place.findMany({
      where: { active: true, readingEveryHours: { not: null } },
      include: {
        readings: {
          where: { withdrawal: null },
          orderBy: { at: 'desc' },
          take: 1,
          select: { at: true },
        },
      },
    });
    return places
      .map((place): ReadingDueView => {
        const last = place.readings[0]?.at;
        const every = (place.readingEveryHours ?? 0) * HOUR_MS;
        const dueAt = last === undefined ? now : new Date(last.getTime() + every);
        return {
          placeId: place.id,
          placeName: place.name,
          tag: place.tag,
          lastAt: last?.toISOString() ?? null,
          dueAt: dueAt.toISOString(),
          overdue: dueAt <= now,
        };
      })
      .sort((a, b) => a.dueAt.localeCompare(b.dueAt));
  }

  private async subjectOf(
    tx: Tx,
    dto: TakeReadingDto,
  ): Promise<{ place: Place | null; lotId: string | null; name: string }> {
    if ((dto.placeId === undefined) === (dto.lotCode === undefined)) {
      throw new RefusalError({
        code: 'not-valid',
        detail: say`A reading is of a place or of a lot: give one of the two.`,
      });
    }
    if (dto.reversesId !== undefined) {
      orNotFound(await findReading(tx, dto.reversesId), 'reading', dto.reversesId);
    }
    if (dto.placeId !== undefined) {
      const found = await tx.place.findUnique({ where: { id: dto.placeId } });
      const place = orNotFound(found, 'place', dto.placeId);
      return { place, lotId: null, name: place.name };
    }
    const code = dto.lotCode ?? '';
    const lot = orNotFound(await tx.lot.findUnique({ where: { code } }), 'lot', code);
    return { place: null, lotId: lot.id, name: code };
  }
}
