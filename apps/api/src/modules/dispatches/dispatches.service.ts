import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { checkForSale, type Receiver } from '../../domain/dispatch';
import type { StockShare } from '../../domain/stock';
import { Decimal } from '../../domain/units';
import { DatabaseService } from '../../platform/database/database.service';
import { dayToDb } from '../../platform/database/days';
import { decimalToDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { decodeCursor, limitOf, type Page, pageOf } from '../../platform/paging/page';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { nextCode } from '../codes';
import { closeWhenSent, orderToSend } from '../orders';
import { loadLotsForUse, type LotForUse, takeFromLot } from '../stock';
import type { CounterDayQuery, CreateDispatchDto, DispatchQuery } from './dispatches.dto';
import type { CounterSalesView, DispatchView } from './dispatches.view';
import { refuseTwice } from './each-lot-once';
import * as repository from './dispatches.repository';
import { say } from '../../domain/words/say';

interface LineToBook {
  readonly lot: LotForUse;
  readonly share: StockShare;
}

@Injectable()
export class DispatchesService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  /** Newest first. */
  async list(query: DispatchQuery): Promise<Page<DispatchView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    const where = {
      ...(query.customerId === undefined ? {} : { customerId: query.customerId }),
      ...(query.counter === true ? { customerId: null } : {}),
      sentOn: {
        ...(query.from === undefined ? {} : { gte: dayToDb(query.from) }),
        ...(query.to === undefined ? {} : { lte: dayToDb(query.to) }),
      },
    };
    const rows = await repository.listDispatches(this.database.client, limit, where, after);
    const views = await repository.dispatchViews(this.database.client, rows);
    return pageOf(
      views,
      limit,
      (row) => row,
      (row) => [row.id],
    );
  }

  get(id: string): Promise<DispatchView> {
    return repository.showDispatch(this.database.client, id);
  }

  async counterSales(query: CounterDayQuery): Promise<CounterSalesView> {
    return { items: await repository.counterSales(this.database.client, query.from, query.to) };
  }

  /** Sends boxes and pieces to a customer, or books them as sold over the counter that day. */
  create(dto: CreateDispatchDto): Promise<DispatchView> {
    return this.transactions.book(async (tx, by) => {
      const receiver = await this.receiverOf(tx, dto.customerId);
      const order = dto.orderId ? await orderToSend(tx, dto.orderId, dto.customerId) : null;
      const sentOn = this.dayOf(by, dto.sentOn);
      const lines = await this.linesOf(tx, by, dto, receiver, sentOn);
      const id = newId();
      const code = await nextCode(tx, by, 'dispatch');
      await tx.dispatch.create({
        data: {
          id,
          code,
          customerId: dto.customerId,
          sentOn: dayToDb(sentOn.toString()),
          note: dto.note ?? null,
          orderId: order?.id ?? null,
          at: by.at,
          userId: by.userId,
        },
        select: { id: true },
      });
      await tx.dispatchLine.createMany({
        data: lines.map(({ lot, share }, index) => ({
          id: newId(),
          dispatchId: id,
          position: index + 1,
          lotId: lot.id,
          quantity: decimalToDb(share.quantity),
          massG: decimalToDb(share.massG),
          cost: decimalToDb(share.cost),
        })),
      });
      noteInJournal(by, {
        action: 'dispatch.sent',
        subjectKind: 'dispatch',
        subjectId: code,
        detail: {
          to: receiver.name,
          lots: lines.map(({ lot }) => lot.code),
          shortLifeReason: dto.shortLifeReason ?? null,
        },
      });
      if (order !== null) await closeWhenSent(tx, by, order);
      return repository.showDispatch(tx, id);
    });
  }

  private async receiverOf(tx: Tx, customerId: string | null): Promise<Receiver> {
    if (customerId === null) return { name: 'the counter', minimumLifeDays: 0 };
    const found = await tx.customer.findUnique({ where: { id: customerId } });
    const { name, minimumLifeDays } = orNotFound(found, 'customer', customerId);
    return { name, minimumLifeDays };
  }

  /** A forgotten sale may be booked later, but nothing is sent tomorrow. */
  private dayOf(by: By, sentOn: string | undefined): Temporal.PlainDate {
    const day = sentOn === undefined ? by.today : Temporal.PlainDate.from(sentOn);
    if (Temporal.PlainDate.compare(day, by.today) <= 0) return day;
    throw new RefusalError({
      code: 'not-valid',
      detail: say`It is ${by.today.toString()}: book a dispatch on the day on which it goes.`,
    });
  }

  private async linesOf(
    tx: Tx,
    by: By,
    dto: CreateDispatchDto,
    receiver: Receiver,
    sentOn: Temporal.PlainDate,
  ): Promise<LineToBook[]> {
    const codes = dto.lines.map(({ lotCode }) => lotCode);
    refuseTwice(codes);
    const lots = await loadLotsForUse(tx, codes);
    return dto.lines.map((line) => {
      const lot = orNotFound(lots.get(line.lotCode), 'lot', line.lotCode);
      const share = takeFromLot(lot, new Decimal(line.quantity), by.today);
      orRefuse(checkForSale(lot, receiver, sentOn, dto.shortLifeReason ?? null));
      return { lot, share };
    });
  }
}
