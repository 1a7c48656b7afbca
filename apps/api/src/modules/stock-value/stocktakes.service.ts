import { Injectable } from '@nestjs/common';
import { countDifference } from '../../domain/stock';
import { Decimal, sum } from '../../domain/units';
import type { Prisma } from '../../generated/prisma/client';
import { dayFromDb, dayToDb } from '../../platform/database/days';
import {
  decimalFromDb,
  decimalToDb,
  moneyText,
  quantityText,
} from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import {
  decodeCursor,
  limitOf,
  type Page,
  pageOf,
  type PageQuery,
} from '../../platform/paging/page';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { loadLotsForUse, type LotForUse } from '../stock';
import type { CountDto, StocktakeDto, StocktakeView } from './stock-value.dto';
import { say } from '../../domain/words/say';

type Stored = Prisma.StocktakeGetPayload<{ include: { lines: true } }>;

const viewOf = async (tx: Tx, rows: readonly Stored[]): Promise<StocktakeView[]> => {
  const lots = await tx.lot.findMany({
    where: { id: { in: rows.flatMap(({ lines }) => lines.map(({ lotId }) => lotId)) } },
    select: { id: true, code: true, item: { select: { name: true } } },
  });
  const lotOf = new Map(lots.map((lot) => [lot.id, lot]));
  return rows.map((row) => ({
    id: row.id,
    countedOn: dayFromDb(row.countedOn),
    note: row.note,
    cost: moneyText(sum(row.lines.map(({ cost }) => decimalFromDb(cost)))),
    lines: row.lines.map((line) => ({
      lotCode: lotOf.get(line.lotId)?.code ?? '',
      itemName: lotOf.get(line.lotId)?.item.name ?? '',
      bookedQuantity: quantityText(line.bookedQuantity),
      countedQuantity: quantityText(line.countedQuantity),
      difference: quantityText(line.countedQuantity.minus(line.bookedQuantity)),
      cost: moneyText(line.cost),
    })),
  }));
};

@Injectable()
export class StocktakesService {
  constructor(private readonly transactions: Transactions) {}

  list(query: PageQuery): Promise<Page<StocktakeView>> {
    return this.transactions.read(async (tx) => {
      const [after] = decodeCursor(query.after, 1) ?? [];
      const limit = limitOf(query);
      const rows = await tx.stocktake.findMany({
        ...(after === undefined ? {} : { where: { id: { lt: after } } }),
        orderBy: { id: 'desc' },
        take: limit + 1,
        include: { lines: true },
      });
      const views = await viewOf(tx, rows);
      return pageOf(
        views,
        limit,
        (view) => view,
        (view) => [view.id],
      );
    });
  }

  /** Books a count of many lots at once; every difference is a movement that names the stocktake. */
  take(dto: StocktakeDto): Promise<StocktakeView> {
    return this.transactions.book(async (tx, by) => {
      const codes = dto.counts.map(({ lotCode }) => lotCode);
      if (new Set(codes).size < codes.length) {
        throw new RefusalError({
          code: 'not-valid',
          detail: say`A lot is counted twice in this stocktake. Add the two counts up.`,
        });
      }
      const lots = await loadLotsForUse(tx, codes);
      const id = newId();
      await tx.stocktake.create({
        data: {
          id,
          countedOn: dayToDb(by.today.toString()),
          note: dto.note ?? null,
          at: by.at,
          userId: by.userId,
        },
      });
      for (const count of dto.counts) {
        const lot = orNotFound(lots.get(count.lotCode), 'lot', count.lotCode);
        await this.bookCount(tx, by, id, lot, count);
      }
      noteInJournal(by, {
        action: 'stocktake.booked',
        subjectKind: 'stocktake',
        subjectId: id,
        detail: { lots: codes.length },
      });
      const row = await tx.stocktake.findUniqueOrThrow({ where: { id }, include: { lines: true } });
      return orNotFound((await viewOf(tx, [row]))[0], 'stocktake', id);
    });
  }

  private async bookCount(
    tx: Tx,
    by: By,
    stocktakeId: string,
    lot: LotForUse,
    count: CountDto,
  ): Promise<void> {
    const row = await tx.lot.findUniqueOrThrow({ where: { id: lot.id } });
    const counted = new Decimal(count.countedQuantity);
    const made = {
      quantity: decimalFromDb(row.madeQuantity),
      massG: decimalFromDb(row.madeMassG),
    };
    const difference = orRefuse(countDifference(lot, counted, made));
    await tx.stocktakeLine.create({
      data: {
        id: newId(),
        stocktakeId,
        lotId: lot.id,
        bookedQuantity: decimalToDb(lot.onHand.quantity),
        countedQuantity: decimalToDb(counted),
        cost: difference === null ? '0' : decimalToDb(difference.cost),
      },
    });
    if (difference === null) return;
    await tx.movement.create({
      data: {
        id: newId(),
        lotId: lot.id,
        quantity: decimalToDb(difference.quantity),
        massG: decimalToDb(difference.massG),
        cost: decimalToDb(difference.cost),
        kind: 'counted',
        eventId: stocktakeId,
        reason: 'stocktake',
        at: by.at,
        userId: by.userId,
      },
      select: { id: true },
    });
  }
}
