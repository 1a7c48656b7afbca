import {
  Day,
  DecimalText,
  Flag,
  Id,
  Instant,
  ListOf,
  Money,
  Quantity,
  Text,
} from '../../platform/dto';
import { PageQuery } from '../../platform/paging/page';

const degrees = { places: 2, negative: true, nullable: true } as const;

export class DeliveryLineDto {
  @Id()
  itemId: string;

  @Text({ max: 60, description: 'The supplier’s lot as on the carton' })
  supplierLotCode: string;

  @Day({ optional: true, nullable: true })
  bestBefore?: string | null;

  @Day({ optional: true, nullable: true })
  useBy?: string | null;

  @Quantity({ description: 'In the unit of the item: grams or pieces' })
  quantity: string;

  @Money({ description: 'Price of the whole line, net of VAT' })
  price: string;

  @DecimalText({ ...degrees, optional: true, description: 'On arrival' })
  tempC?: string | null;

  @Id({ optional: true, nullable: true, description: 'Where it is put' })
  placeId?: string | null;

  @Text({ optional: true, nullable: true, max: 300, description: 'Set when the line is refused' })
  refusalReason?: string | null;
}

export class CreateDeliveryDto {
  @Id()
  supplierId: string;

  @Text({ optional: true, nullable: true, max: 80, description: 'Number of the delivery note' })
  reference?: string | null;

  @Text({ optional: true, nullable: true, max: 2000 })
  note?: string | null;

  @ListOf(() => DeliveryLineDto, { min: 1, max: 200 })
  lines: DeliveryLineDto[];
}

export class DeliveryQuery extends PageQuery {
  @Id({ optional: true })
  supplierId?: string;
}

export class DeliveryLineView {
  @Id()
  id: string;

  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Text()
  unit: string;

  @Text({ description: 'Code of the lot that the line made' })
  lotCode: string;

  @Text()
  supplierLotCode: string;

  @Day({ nullable: true })
  bestBefore: string | null;

  @Day({ nullable: true })
  useBy: string | null;

  @Quantity()
  quantity: string;

  @Money()
  price: string;

  @DecimalText(degrees)
  tempC: string | null;

  @Flag()
  accepted: boolean;

  @Text({ nullable: true })
  refusalReason: string | null;

  @Text({ nullable: true, description: 'Why the lot is on hold by itself' })
  heldBecause: string | null;
}

export class DeliveryView {
  @Id()
  id: string;

  @Id()
  supplierId: string;

  @Text()
  supplierName: string;

  @Text({ nullable: true })
  reference: string | null;

  @Day()
  receivedOn: string;

  @Instant()
  receivedAt: string;

  @Text({ nullable: true })
  note: string | null;

  @ListOf(() => DeliveryLineView)
  lines: DeliveryLineView[];
}
