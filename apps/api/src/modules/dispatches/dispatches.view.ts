import { Choice, Day, Grams, Id, Instant, ListOf, Quantity, Text } from '../../platform/dto';

export class DispatchLineView {
  @Id()
  id: string;

  @Text()
  lotCode: string;

  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Choice(['g', 'pc'])
  unit: string;

  @Quantity()
  quantity: string;

  @Grams()
  massGrams: string;

  @Quantity({ description: 'Came back since' })
  returnedQuantity: string;

  @Day({ nullable: true })
  bestBefore: string | null;

  @Day({ nullable: true })
  useBy: string | null;
}

export class DispatchView {
  @Id()
  id: string;

  @Text()
  code: string;

  @Id({ nullable: true })
  customerId: string | null;

  @Text({ nullable: true, description: 'Null: over the counter' })
  customerName: string | null;

  @Day()
  sentOn: string;

  @Text({ nullable: true })
  note: string | null;

  @Id({ nullable: true })
  orderId: string | null;

  @Instant()
  at: string;

  @ListOf(() => DispatchLineView)
  lines: DispatchLineView[];
}

export class CounterSaleView {
  @Day()
  day: string;

  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Quantity({ description: 'Sold less what came back' })
  quantity: string;

  @Grams()
  massGrams: string;
}

export class CounterSalesView {
  @ListOf(() => CounterSaleView, { description: 'By day, then by name' })
  items: CounterSaleView[];
}
