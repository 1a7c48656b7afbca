import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { mayFreeze, thawedDate, type DateReason, type FreezableLot } from '../../domain/shelf-life';
import type { Prisma } from '../../generated/prisma/client';
import { dayFromDb, dayToDb, optionalDayFromDb } from '../../platform/database/days';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import type { LotDatesView } from './lot-dates.dto';
import { say } from '../../domain/words/say';

const included = {
  item: true,
  recipeVersion: { select: { lifeAfterThawDays: true, dateKind: true } },
  deliveryLine: { select: { bestBefore: true, useBy: true } },
} satisfies Prisma.LotInclude;

type DatedLot = Prisma.LotGetPayload<{ include: typeof included }>;

const CAUTION = say`A date is a promise about cold, clean, closed storage. It follows from what was recorded; whether it may stand on a label is decided by tests and the local authority.`;

/** Explains the date of a lot line by line, and stops its clock in the freezer. */
@Injectable()
export class LotDatesService {
  constructor(private readonly transactions: Transactions) {}

  explain(code: string): Promise<LotDatesView> {
    return this.transactions.read(async (tx) => viewOf(await load(tx, code)));
  }

  freeze(code: string, on: string | undefined): Promise<LotDatesView> {
    return this.transactions.book(async (tx, by) => {
      const lot = await load(tx, code);
      const day = dayOf(by, on);
      const reason = orRefuse(mayFreeze(freezable(lot), day));
      return this.store(tx, by, lot, 'lot.frozen', {
        frozenOn: dayToDb(day.toString()),
        dateReasons: [...reasonsOf(lot), reason] as unknown as Prisma.InputJsonArray,
      });
    });
  }

  thaw(code: string, on: string | undefined): Promise<LotDatesView> {
    return this.transactions.book(async (tx, by) => {
      const lot = await load(tx, code);
      const day = dayOf(by, on);
      const thawed = orRefuse(thawedDate(freezable(lot), day));
      const earlier = reasonsOf(lot).map((line) => ({ ...line, rules: false }));
      const date = dayToDb(thawed.day.toString());
      return this.store(tx, by, lot, 'lot.thawed', {
        thawedOn: dayToDb(day.toString()),
        ...(lot.useBy === null ? { bestBefore: date } : { useBy: date }),
        dateReasons: [...earlier, thawed.reason] as unknown as Prisma.InputJsonArray,
      });
    });
  }

  private async store(
    tx: Tx,
    by: By,
    lot: DatedLot,
    action: string,
    data: Prisma.LotUncheckedUpdateInput,
  ): Promise<LotDatesView> {
    const after = await tx.lot.update({ where: { id: lot.id }, data, include: included });
    noteInJournal(by, { action, subjectKind: 'lot', subjectId: lot.code });
    return viewOf(after);
  }
}

const load = async (tx: Tx, code: string): Promise<DatedLot> =>
  orNotFound(await tx.lot.findUnique({ where: { code }, include: included }), 'lot', code);

const dayOf = (by: By, on: string | undefined): Temporal.PlainDate => {
  const day = on === undefined ? by.today : Temporal.PlainDate.from(on);
  if (Temporal.PlainDate.compare(day, by.today) <= 0) return day;
  throw new RefusalError({
    code: 'not-valid',
    detail: say`${day.toString()} is in the future. Book the freezer on the day it happens.`,
  });
};

const optionalDay = (value: Date | null): Temporal.PlainDate | null =>
  value === null ? null : Temporal.PlainDate.from(dayFromDb(value));

/** The date that stands; a use-by counts before a best-before. */
const dateOf = (lot: DatedLot): Date | null => lot.useBy ?? lot.bestBefore;

const freezable = (lot: DatedLot): FreezableLot => ({
  code: lot.code,
  day: optionalDay(dateOf(lot)),
  frozenOn: optionalDay(lot.frozenOn),
  thawedOn: optionalDay(lot.thawedOn),
  lifeAfterThawDays: lot.recipeVersion?.lifeAfterThawDays ?? null,
});

/** Lines as they were stored; a received lot explains itself by its delivery. */
const reasonsOf = (lot: DatedLot): DateReason[] => {
  const stored = lot.dateReasons as unknown as DateReason[];
  if (stored.length > 0 || lot.deliveryLine === null) return stored;
  const { useBy, bestBefore } = lot.deliveryLine;
  const day = optionalDayFromDb(useBy ?? bestBefore);
  const words = useBy === null ? say`best before` : say`use by`;
  return [
    {
      kind: day === null ? 'drawn_lot_without_date' : 'drawn_lot',
      day,
      lotCode: lot.code,
      rules: day !== null,
      text:
        day === null
          ? say`The supplier gave no date for this lot.`
          : say`The supplier’s own date: ${words} ${day}.`,
    },
  ];
};

const viewOf = (lot: DatedLot): LotDatesView => ({
  lotCode: lot.code,
  itemName: lot.item.name,
  kind: lot.useBy !== null ? 'use_by' : lot.bestBefore !== null ? 'best_before' : 'none',
  day: optionalDayFromDb(dateOf(lot)),
  frozenOn: optionalDayFromDb(lot.frozenOn),
  thawedOn: optionalDayFromDb(lot.thawedOn),
  reasons: reasonsOf(lot).map((line) => ({ ...line })),
  caution: CAUTION,
});
