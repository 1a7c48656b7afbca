import { Injectable } from '@nestjs/common';
import { receiveLine, type ReceivedLot } from '../../domain/receiving';
import { DatabaseService } from '../../platform/database/database.service';
import { dayToDb, optionalDayToDb } from '../../platform/database/days';
import { decimalToDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { decodeCursor, limitOf, type Page, pageOf } from '../../platform/paging/page';
import { orNotFound, orRefuse } from '../../platform/problems';
import { nextCode } from '../codes';
import { placeHolds } from '../stock';
import type {
  CreateDeliveryDto,
  DeliveryLineDto,
  DeliveryQuery,
  DeliveryView,
} from './deliveries.dto';
import * as repository from './deliveries.repository';
import { goodsLineOf } from './goods-line';

@Injectable()
export class DeliveriesService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async list(query: DeliveryQuery): Promise<Page<DeliveryView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    const filter = { after, supplierId: query.supplierId };
    const rows = await repository.listDeliveries(this.database.client, limit, filter);
    return pageOf(rows, limit, repository.deliveryView, (row) => [row.id]);
  }

  async get(id: string): Promise<DeliveryView> {
    const found = await repository.findDelivery(this.database.client, id);
    return repository.deliveryView(orNotFound(found, 'delivery', id));
  }

  /** Books a whole delivery or nothing of it. */
  create(dto: CreateDeliveryDto): Promise<DeliveryView> {
    return this.transactions.book(async (tx, by) => {
      const supplier = await tx.supplier.findUnique({ where: { id: dto.supplierId } });
      orNotFound(supplier, 'supplier', dto.supplierId);
      const itemIds = dto.lines.map((line) => line.itemId);
      const items = await repository.findGoodsItems(tx, itemIds, dto.supplierId);
      const delivery = await tx.delivery.create({
        data: {
          id: newId(),
          supplierId: dto.supplierId,
          reference: dto.reference ?? null,
          receivedOn: dayToDb(by.today.toString()),
          receivedAt: by.at,
          userId: by.userId,
          note: dto.note ?? null,
        },
      });
      const codes: string[] = [];
      for (const [index, line] of dto.lines.entries()) {
        const item = orNotFound(items.get(line.itemId), 'item', line.itemId);
        const received = orRefuse(receiveLine(goodsLineOf(line, item), by.today));
        codes.push(await bookLine(tx, by, delivery.id, index + 1, { line, item, received }));
      }
      noteInJournal(by, {
        action: 'delivery.booked',
        subjectKind: 'delivery',
        subjectId: delivery.id,
        detail: { supplier: supplier?.name ?? '', reference: dto.reference ?? null, lots: codes },
      });
      const booked = await repository.findDelivery(tx, delivery.id);
      return repository.deliveryView(orNotFound(booked, 'delivery', delivery.id));
    });
  }
}

interface LineToBook {
  readonly line: DeliveryLineDto;
  readonly item: repository.GoodsItem;
  readonly received: ReceivedLot;
}

/** The line, its lot, and the holds that the lot starts with. Returns the lot's code. */
const bookLine = async (
  tx: Tx,
  by: By,
  deliveryId: string,
  position: number,
  { line, item, received }: LineToBook,
): Promise<string> => {
  const lineId = newId();
  const lotId = newId();
  const code = await nextCode(tx, by, 'lot');
  const dates = {
    bestBefore: optionalDayToDb(line.bestBefore),
    useBy: optionalDayToDb(line.useBy),
  };
  await tx.deliveryLine.create({
    data: {
      id: lineId,
      deliveryId,
      position,
      itemId: item.id,
      supplierLotCode: line.supplierLotCode,
      ...dates,
      quantity: line.quantity,
      price: line.price,
      tempC: line.tempC ?? null,
      accepted: !received.refused,
      refusalReason: line.refusalReason ?? null,
    },
  });
  await tx.lot.create({
    data: {
      id: lotId,
      code,
      itemId: item.id,
      unit: item.unit,
      specificationId: item.specifications[0]?.id ?? null,
      deliveryLineId: lineId,
      madeQuantity: decimalToDb(received.made.quantity),
      madeMassG: decimalToDb(received.made.massG),
      madeCost: decimalToDb(received.made.cost),
      ...dates,
      madeOn: dayToDb(by.today.toString()),
      placeId: line.placeId ?? null,
      refused: received.refused,
      createdAt: by.at,
      userId: by.userId,
    },
  });
  await placeHolds(
    tx,
    by,
    received.holds.map((hold) => ({ lotId, ...hold, causeId: lineId })),
  );
  await readTemperature(tx, by, { lotId, lineId, item, line });
  return code;
};

const readTemperature = async (
  tx: Tx,
  by: By,
  at: { lotId: string; lineId: string; item: repository.GoodsItem; line: DeliveryLineDto },
): Promise<void> => {
  const { tempC } = at.line;
  if (tempC === null || tempC === undefined) return;
  const high = at.item.warmestTempC;
  const tooWarm = high?.lessThan(tempC) === true;
  await tx.reading.create({
    data: {
      id: newId(),
      measure: 'temp_c',
      value: tempC,
      high,
      verdict: high === null ? 'no_limit' : tooWarm ? 'high' : 'in',
      lotId: at.lotId,
      deliveryLineId: at.lineId,
      step: 'on arrival',
      at: by.at,
      userId: by.userId,
    },
  });
};
