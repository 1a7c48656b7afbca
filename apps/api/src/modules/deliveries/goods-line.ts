import { Temporal } from 'temporal-polyfill';
import type { GoodsLine } from '../../domain/receiving';
import type { StockUnit } from '../../domain/stock';
import { Decimal } from '../../domain/units';
import { optionalDecimalFromDb } from '../../platform/database/decimals';
import type { DeliveryLineDto } from './deliveries.dto';
import type { GoodsItem } from './deliveries.repository';

const day = (text: string | null | undefined): Temporal.PlainDate | null =>
  text === null || text === undefined ? null : Temporal.PlainDate.from(text);

/** What the domain asks of a delivery line, from the request and the item's own facts. */
export const goodsLineOf = (dto: DeliveryLineDto, item: GoodsItem): GoodsLine => {
  const specification = item.specifications[0];
  return {
    itemName: item.name,
    itemKind: item.kind,
    unit: item.unit as StockUnit,
    perishable: item.perishable,
    warmestTempC: optionalDecimalFromDb(item.warmestTempC),
    pieceMassG: optionalDecimalFromDb(item.nominalMassG),
    supplierLotCode: dto.supplierLotCode,
    quantity: new Decimal(dto.quantity),
    price: new Decimal(dto.price),
    tempC: dto.tempC === null || dto.tempC === undefined ? null : new Decimal(dto.tempC),
    bestBefore: day(dto.bestBefore),
    useBy: day(dto.useBy),
    refusalReason: dto.refusalReason ?? null,
    specification:
      specification === undefined
        ? null
        : { allergensUnknown: specification.allergens.map((row) => row.allergen) },
  };
};
