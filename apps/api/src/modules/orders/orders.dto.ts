import { Choice, Day, Id, ListOf, Money, Quantity, Text, Whole } from '../../platform/dto';
import { PageQuery } from '../../platform/paging/page';

export const ORDER_STATES = ['open', 'done', 'cancelled'] as const;

export class OrderQuery extends PageQuery {
  @Choice(ORDER_STATES, { optional: true })
  state?: string;

  @Day({ optional: true, description: 'Due on this day or before' })
  dueBefore?: string;

  @Id({ optional: true })
  customerId?: string;
}

export class OrderLineDto {
  @Id({ description: 'A piece or a box' })
  itemId: string;

  @Quantity({ description: 'Whole pieces or boxes' })
  quantity: string;

  @Money({ optional: true, nullable: true, description: 'Agreed for one, without VAT' })
  netPrice?: string | null;
}

export class CreateOrderDto {
  @Id({ optional: true, nullable: true, description: 'Null: for the counter' })
  customerId?: string | null;

  @Day()
  dueOn: string;

  @Whole({ optional: true, max: 3650, description: 'The customer’s own when left out' })
  minimumLifeDays?: number;

  @Text({ optional: true, nullable: true, max: 1000 })
  note?: string | null;

  @ListOf(() => OrderLineDto, { min: 1, max: 100 })
  lines: OrderLineDto[];
}

export class ChangeOrderDto {
  @Day({ optional: true })
  dueOn?: string;

  @Whole({ optional: true, max: 3650 })
  minimumLifeDays?: number;

  @Choice(ORDER_STATES, { optional: true })
  state?: string;

  @Text({ optional: true, nullable: true, max: 1000 })
  note?: string | null;

  @ListOf(() => OrderLineDto, { optional: true, min: 1, max: 100 })
  lines?: OrderLineDto[];
}

export class OrderLineView {
  @Id()
  id: string;

  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Quantity()
  quantity: string;

  @Money({ nullable: true })
  netPrice: string | null;

  @Quantity({ description: 'Sent already, by dispatches that name the order' })
  sentQuantity: string;
}

export class OrderView {
  @Id()
  id: string;

  @Text()
  code: string;

  @Id({ nullable: true })
  customerId: string | null;

  @Text({ nullable: true })
  customerName: string | null;

  @Day()
  dueOn: string;

  @Whole()
  minimumLifeDays: number;

  @Choice(ORDER_STATES)
  state: string;

  @Text({ nullable: true })
  note: string | null;

  @Whole()
  version: number;

  @ListOf(() => OrderLineView)
  lines: OrderLineView[];
}
