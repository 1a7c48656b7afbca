import { Injectable } from '@nestjs/common';
import type { Temporal } from 'temporal-polyfill';
import { DatabaseService } from '../../platform/database/database.service';
import { dayToDb } from '../../platform/database/days';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { decodeCursor, limitOf, type Page, pageOf } from '../../platform/paging/page';
import { orNotFound } from '../../platform/problems';
import type { LotQuery, LotView, MovementView, PinSpecificationDto } from './lots.dto';
import * as repository from './lots.repository';
import { lotView, movementView, peopleOf } from './lots.view';

/** The lot as it stands in this transaction. @throws RefusalError not-found */
export const viewLot = async (
  tx: Tx,
  code: string,
  today: Temporal.PlainDate,
): Promise<LotView> => {
  const lot = orNotFound(await repository.findLot(tx, code), 'lot', code);
  return lotView(lot, today, await repository.userNames(tx, peopleOf([lot])));
};

@Injectable()
export class LotsService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async list(query: LotQuery): Promise<Page<LotView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    const { client } = this.database;
    const today = this.transactions.today();
    const at = { after, today: dayToDb(today.toString()) };
    const rows = await repository.listLots(client, limit, query, at);
    const names = await repository.userNames(client, peopleOf(rows));
    return pageOf(
      rows,
      limit,
      (row) => lotView(row, today, names),
      (row) => [row.id],
    );
  }

  async get(code: string): Promise<LotView> {
    const { client } = this.database;
    return viewLot(client, code, this.transactions.today());
  }

  movements(code: string): Promise<MovementView[]> {
    return this.transactions.read(async (tx) => {
      const lot = orNotFound(await repository.findLot(tx, code), 'lot', code);
      const rows = await repository.listMovements(tx, lot.id);
      const batches = await tx.batch.findMany({
        where: { id: { in: rows.flatMap((row) => row.batchId ?? []) } },
        select: { id: true, code: true },
      });
      const lines = await tx.dispatchLine.findMany({
        where: { id: { in: rows.flatMap((row) => row.dispatchLineId ?? []) } },
        select: { id: true, dispatch: { select: { code: true } } },
      });
      const events = {
        names: await repository.userNames(
          tx,
          rows.map((row) => row.userId),
        ),
        batchCodes: new Map(batches.map((batch) => [batch.id, batch.code])),
        dispatchCodes: new Map(lines.map((line) => [line.id, line.dispatch.code])),
      };
      return rows.map((row) => movementView(row, events));
    });
  }

  move(code: string, placeId: string): Promise<LotView> {
    return this.transactions.book(async (tx, by) => {
      const lot = orNotFound(await repository.findLot(tx, code), 'lot', code);
      const place = await tx.place.findUnique({ where: { id: placeId } });
      orNotFound(place, 'place', placeId);
      await tx.lot.update({ where: { id: lot.id }, data: { placeId }, select: { id: true } });
      noteInJournal(by, {
        action: 'lot.moved',
        subjectKind: 'lot',
        subjectId: code,
        // By id too: names may change, and a trace asks where a lot stood at some moment.
        detail: {
          from: lot.place?.name ?? null,
          fromId: lot.placeId,
          to: place?.name ?? null,
          toId: placeId,
        },
      });
      return viewLot(tx, code, by.today);
    });
  }

  /** Pins the specification that was approved after the goods had come in. */
  pinSpecification(code: string, dto: PinSpecificationDto): Promise<LotView> {
    return this.transactions.book(async (tx, by) => {
      const lot = orNotFound(await repository.findLot(tx, code), 'lot', code);
      const specification = await tx.specification.findUnique({
        where: { id: dto.specificationId },
      });
      orNotFound(specification, 'specification', dto.specificationId);
      await tx.lot.update({
        where: { id: lot.id },
        data: { specificationId: dto.specificationId },
        select: { id: true },
      });
      noteInJournal(by, {
        action: 'lot.specification-pinned',
        subjectKind: 'lot',
        subjectId: code,
        detail: {
          before: lot.specificationId,
          after: dto.specificationId,
          number: specification?.number ?? null,
          reason: dto.reason,
        },
      });
      return viewLot(tx, code, by.today);
    });
  }
}
