import type { ListedPrice, PriceListKind } from '../../domain/pricing';
import type { Price } from '../../generated/prisma/client';
import { dayFromDb, dayToDb } from '../../platform/database/days';
import { decimalFromDb, moneyText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import type { ListedPriceView, SetPriceDto } from './prices.dto';

export const listedPriceView = (price: Price, holding: string | undefined): ListedPriceView => ({
  id: price.id,
  list: price.list,
  price: moneyText(price.price),
  fromDay: dayFromDb(price.fromDay),
  note: price.note,
  holds: price.id === holding,
});

/** In the order in which they were set, so that of one day the later holds. */
export const pricesOf = (tx: Tx, itemId: string, list?: PriceListKind): Promise<Price[]> =>
  tx.price.findMany({
    where: { itemId, ...(list ? { list } : {}) },
    orderBy: [{ fromDay: 'asc' }, { at: 'asc' }, { id: 'asc' }],
  });

export const allPrices = (tx: Tx, list: PriceListKind): Promise<Price[]> =>
  tx.price.findMany({
    where: { list },
    orderBy: [{ fromDay: 'asc' }, { at: 'asc' }, { id: 'asc' }],
  });

export interface StoredPrice extends ListedPrice {
  readonly id: string;
}

export const historyOf = (prices: readonly Price[]): StoredPrice[] =>
  prices.map(({ id, price, fromDay }) => ({
    id,
    price: decimalFromDb(price),
    fromDay: dayFromDb(fromDay),
  }));

export const insertPrice = (tx: Tx, by: By, itemId: string, dto: SetPriceDto): Promise<Price> =>
  tx.price.create({
    data: {
      id: newId(),
      itemId,
      list: dto.list,
      price: dto.price,
      fromDay: dayToDb(dto.fromDay),
      note: dto.note ?? null,
      at: by.at,
      userId: by.userId,
    },
  });
