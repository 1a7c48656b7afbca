import { Injectable } from '@nestjs/common';
import { moneyText, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, RefusalError } from '../../platform/problems';
import type {
  MinimumOrderDto,
  MinimumOrderView,
  SupplyTermDto,
  SupplyTermView,
} from './supply.dto';
import { say } from '../../domain/words/say';

/** From whom things are bought: one supplier an item, so that a shopping list can be written. */
@Injectable()
export class SupplyService {
  constructor(private readonly transactions: Transactions) {}

  terms(): Promise<SupplyTermView[]> {
    return this.transactions.read((tx) => this.show(tx));
  }

  setTerm(itemId: string, dto: SupplyTermDto): Promise<SupplyTermView> {
    return this.transactions.book(async (tx, by) => {
      const item = orNotFound(await tx.item.findUnique({ where: { id: itemId } }), 'item', itemId);
      orNotFound(
        await tx.supplier.findUnique({ where: { id: dto.supplierId } }),
        'supplier',
        dto.supplierId,
      );
      if (dto.packQuantity !== null && Number(dto.packQuantity) === 0) {
        throw new RefusalError({ code: 'not-valid', detail: say`A pack holds more than nothing.` });
      }
      const data = { ...dto };
      await tx.supplyTerm.upsert({
        where: { itemId },
        create: { id: newId(), itemId, ...data },
        update: { ...data, version: { increment: 1 } },
      });
      noteInJournal(by, {
        action: 'supply-term.set',
        subjectKind: 'item',
        subjectId: item.name,
        detail: { ...dto },
      });
      const [term] = await this.show(tx, itemId);
      return orNotFound(term, 'supply term of', item.name);
    });
  }

  async minimumOrders(): Promise<MinimumOrderView[]> {
    return this.transactions.read(async (tx) =>
      (await tx.minimumOrder.findMany()).map(({ supplierId, amount }) => ({
        supplierId,
        amount: moneyText(amount),
      })),
    );
  }

  setMinimumOrder(supplierId: string, dto: MinimumOrderDto): Promise<MinimumOrderView> {
    return this.transactions.book(async (tx, by) => {
      const supplier = orNotFound(
        await tx.supplier.findUnique({ where: { id: supplierId } }),
        'supplier',
        supplierId,
      );
      await tx.minimumOrder.upsert({
        where: { supplierId },
        create: { supplierId, amount: dto.amount },
        update: { amount: dto.amount, version: { increment: 1 } },
      });
      noteInJournal(by, {
        action: 'minimum-order.set',
        subjectKind: 'supplier',
        subjectId: supplier.name,
        detail: { ...dto },
      });
      return { supplierId, amount: dto.amount };
    });
  }

  private async show(tx: Tx, itemId?: string): Promise<SupplyTermView[]> {
    const terms = await tx.supplyTerm.findMany({
      where: itemId === undefined ? {} : { itemId },
    });
    const items = await tx.item.findMany({
      where: { id: { in: terms.map((term) => term.itemId) } },
      orderBy: { name: 'asc' },
    });
    const suppliers = await tx.supplier.findMany({
      where: { id: { in: terms.map((term) => term.supplierId) } },
    });
    const supplierName = new Map(suppliers.map(({ id, name }) => [id, name]));
    return items.flatMap((item) => {
      const term = terms.find((candidate) => candidate.itemId === item.id);
      if (!term) return [];
      return [
        {
          itemId: item.id,
          itemName: item.name,
          supplierId: term.supplierId,
          supplierName: supplierName.get(term.supplierId) ?? '',
          leadDays: term.leadDays,
          packQuantity: term.packQuantity === null ? null : quantityText(term.packQuantity),
        },
      ];
    });
  }
}
