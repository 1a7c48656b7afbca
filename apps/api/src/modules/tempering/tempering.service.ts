import { Injectable } from '@nestjs/common';
import {
  condensationRisk,
  dewPointC,
  judgeTempering,
  temperingLimits,
  WARMEST_FILLING_C,
  type TemperingStep,
} from '../../domain/tempering';
import { Decimal } from '../../domain/units';
import type { Item, Prisma } from '../../generated/prisma/client';
import { DatabaseService } from '../../platform/database/database.service';
import { Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, RefusalError } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import { itemsWithCurve, type ItemWithSettings } from './items-with-curve.queries';
import { curveOf, TEMPERING, type CurveInForce } from './stored-curve';
import {
  TEMPERING_STEPS,
  type RoomDto,
  type RoomVerdictView,
  type TemperingCurveDto,
  type TemperingReadingDto,
  type TemperingVerdictView,
  type TemperingView,
  type TempWindowDto,
} from './tempering.dto';
import { say, type Sentence } from '../../domain/words/say';

const notValid = (detail: Sentence): RefusalError =>
  new RefusalError({ code: 'not-valid', detail });

/** Windows for melting, cooling and working a chocolate, and what a reading means for it. */
@Injectable()
export class TemperingService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async get(itemId: string): Promise<TemperingView> {
    return viewOf(await this.item(itemId));
  }

  async curves(): Promise<TemperingView[]> {
    return (await itemsWithCurve(this.database.client)).map(viewOf);
  }

  async judge(itemId: string, dto: TemperingReadingDto): Promise<TemperingVerdictView> {
    const { curve } = curveInForce(await this.item(itemId));
    const verdict = judgeTempering(curve, dto.step as TemperingStep, new Decimal(dto.tempC));
    const [lowC, highC] = [verdict.lowC.toFixed(2), verdict.highC.toFixed(2)];
    return { ...verdict, lowC, highC };
  }

  change(itemId: string, seen: number, dto: TemperingCurveDto): Promise<TemperingView> {
    checkCurve(dto);
    return this.transactions.book(async (tx, by) => {
      const found = await tx.item.findUnique({ where: { id: itemId } });
      const item = orNotFound(found, 'item', itemId);
      refuseIfStale('item', seen, item.version);
      const curve = JSON.parse(JSON.stringify(dto)) as Prisma.InputJsonObject;
      const settings = { ...(item.settings as Prisma.InputJsonObject), [TEMPERING]: curve };
      const after = await tx.item.update({
        where: { id: itemId },
        data: { settings, version: { increment: 1 } },
      });
      noteInJournal(by, {
        action: 'item.tempering-set',
        subjectKind: 'item',
        subjectId: item.name,
        detail: curve,
      });
      return viewOf(after);
    });
  }

  room(dto: RoomDto): RoomVerdictView {
    const humidity = new Decimal(dto.humidityPercent);
    if (humidity.lessThan(1) || humidity.greaterThan(100)) {
      throw notValid(say`Humidity is between 1 and 100 per cent.`);
    }
    const [product, room] = [new Decimal(dto.productC), new Decimal(dto.roomC)];
    if (room.lessThan(-40) || room.greaterThan(50)) {
      throw notValid(say`The dew point is reckoned for rooms between −40 and 50 °C.`);
    }
    return {
      dewPointC: dewPointC(room, humidity).toFixed(2),
      condenses: condensationRisk(product, room, humidity),
    };
  }

  private async item(id: string): Promise<Item> {
    return orNotFound(await this.database.client.item.findUnique({ where: { id } }), 'item', id);
  }
}

const curveInForce = (item: ItemWithSettings): CurveInForce =>
  orNotFound(curveOf(item.settings), 'tempering curve of', item.name);

const viewOf = (item: ItemWithSettings): TemperingView => {
  const { product, isMakers, curve } = curveInForce(item);
  return {
    itemId: item.id,
    itemName: item.name,
    product,
    isMakers,
    source: curve.source,
    checks: TEMPERING_STEPS.filter((step) => step !== 'cool' || curve.cool !== null).map((step) => {
      const window = temperingLimits(curve, step);
      const [low, high] = [window.lowC.toFixed(2), window.highC.toFixed(2)];
      return { step, measure: 'temp_c', low, high };
    }),
    warmestFillingC:
      product === 'coloured_cocoa_butter' ? null : WARMEST_FILLING_C[product].toFixed(2),
  };
};

/** A maker's curve has its windows the right way round; half a curve is a slip. */
const checkCurve = (dto: TemperingCurveDto): void => {
  const windows = [dto.melt, dto.cool, dto.work].flatMap((window) => window ?? []);
  if (windows.length > 0 && (!dto.melt || !dto.work)) {
    throw notValid(say`State at least the windows for melting and for working, or none of them.`);
  }
  const isWrong = ({ lowC, highC }: TempWindowDto): boolean =>
    new Decimal(lowC).greaterThan(highC) || new Decimal(highC).greaterThan(100);
  if (windows.some(isWrong)) {
    throw notValid(say`A window goes from its lower to its higher temperature, up to 100 °C.`);
  }
};
