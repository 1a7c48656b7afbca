import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/units';
import { dayFromDb, dayToDb } from '../../platform/database/days';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { decodeCursor, limitOf, type Page, pageOf } from '../../platform/paging/page';
import { orNotFound, RefusalError } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import type {
  ChangeOrderDto,
  CreateOrderDto,
  OrderLineDto,
  OrderQuery,
  OrderView,
} from './orders.dto';
import * as repository from './orders.repository';
import { named, say } from '../../domain/words/say';

const refuseUnsellable = async (tx: Tx, lines: readonly OrderLineDto[]): Promise<void> => {
  const items = await tx.item.findMany({ where: { id: { in: lines.map((line) => line.itemId) } } });
  const byId = new Map(items.map((item) => [item.id, item]));
  for (const line of lines) {
    const item = orNotFound(byId.get(line.itemId), 'item', line.itemId);
    const quantity = new Decimal(line.quantity);
    if (item.kind !== 'piece' && item.kind !== 'box') {
      throw new RefusalError({
        code: 'not-for-sale',
        detail: say`${item.name} is ${named(item.kind)} and isn’t sold: order pieces or boxes.`,
      });
    }
    if (!quantity.isInteger() || quantity.isZero()) {
      throw new RefusalError({
        code: 'pieces-not-whole',
        detail: say`${item.name} is ordered in whole numbers from one on, not ${line.quantity}.`,
      });
    }
  }
};

@Injectable()
export class OrdersService {
  constructor(private readonly transactions: Transactions) {}

  list(query: OrderQuery): Promise<Page<OrderView>> {
    return this.transactions.read(async (tx) => {
      const limit = limitOf(query);
      const [dueOn, code] = decodeCursor(query.after, 2) ?? [];
      const after =
        dueOn === undefined || code === undefined ? undefined : ([dayToDb(dueOn), code] as const);
      const rows = await repository.listOrders(
        tx,
        {
          ...(query.state === undefined ? {} : { state: query.state }),
          ...(query.customerId === undefined ? {} : { customerId: query.customerId }),
          ...(query.dueBefore === undefined ? {} : { dueBefore: dayToDb(query.dueBefore) }),
        },
        limit + 1,
        after,
      );
      const views = await repository.orderViews(tx, rows);
      return pageOf(
        views,
        limit,
        (view) => view,
        (view) => [view.dueOn, view.code],
      );
    });
  }

  get(id: string): Promise<OrderView> {
    return this.transactions.read((tx) => this.show(tx, id));
  }

  create(dto: CreateOrderDto): Promise<OrderView> {
    return this.transactions.book(async (tx, by) => {
      await refuseUnsellable(tx, dto.lines);
      const customerId = dto.customerId ?? null;
      const customer =
        customerId === null
          ? null
          : orNotFound(
              await tx.customer.findUnique({ where: { id: customerId } }),
              'customer',
              customerId,
            );
      const id = newId();
      const code = await repository.nextOrderCode(tx, by.today.year);
      await tx.order.create({
        data: {
          id,
          code,
          customerId,
          dueOn: dayToDb(dto.dueOn),
          minimumLifeDays: dto.minimumLifeDays ?? customer?.minimumLifeDays ?? 0,
          note: dto.note ?? null,
          at: by.at,
          userId: by.userId,
        },
      });
      await repository.replaceLines(tx, id, dto.lines);
      noteInJournal(by, {
        action: 'order.taken',
        subjectKind: 'order',
        subjectId: code,
        detail: { customer: customer?.name ?? null, dueOn: dto.dueOn },
      });
      return this.show(tx, id);
    });
  }

  /** An order that is done or cancelled can be opened again; its lines change only while open. */
  change(id: string, seen: number, dto: ChangeOrderDto): Promise<OrderView> {
    return this.transactions.book(async (tx, by) => {
      const before = orNotFound(await repository.findOrder(tx, id), 'order', id);
      refuseIfStale('order', seen, before.version);
      if (dto.lines) {
        if (before.state !== 'open') {
          throw new RefusalError({
            code: 'not-valid',
            detail: say`Order ${before.code} is ${named(before.state)}. Open it again to change its lines.`,
          });
        }
        await refuseUnsellable(tx, dto.lines);
        await repository.replaceLines(tx, id, dto.lines);
      }
      await tx.order.update({
        where: { id },
        data: {
          ...(dto.dueOn === undefined ? {} : { dueOn: dayToDb(dto.dueOn) }),
          ...(dto.minimumLifeDays === undefined ? {} : { minimumLifeDays: dto.minimumLifeDays }),
          ...(dto.state === undefined ? {} : { state: dto.state }),
          ...(dto.note === undefined ? {} : { note: dto.note }),
          version: { increment: 1 },
        },
      });
      noteInJournal(by, {
        action: 'order.changed',
        subjectKind: 'order',
        subjectId: before.code,
        detail: {
          dueOn: dto.dueOn ?? dayFromDb(before.dueOn),
          state: dto.state ?? before.state,
          lines: dto.lines?.map(({ itemId, quantity }) => ({ itemId, quantity })) ?? null,
        },
      });
      return this.show(tx, id);
    });
  }

  private async show(tx: Tx, id: string): Promise<OrderView> {
    const order = orNotFound(await repository.findOrder(tx, id), 'order', id);
    return orNotFound((await repository.orderViews(tx, [order]))[0], 'order', id);
  }
}
