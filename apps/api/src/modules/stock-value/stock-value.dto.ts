import {
  Choice,
  Day,
  DecimalText,
  Flag,
  Id,
  ListOf,
  Money,
  Quantity,
  Text,
  Whole,
} from '../../platform/dto';

export class StockValueQuery {
  @Whole({ optional: true, fromQuery: true, max: 3650, description: 'Nothing taken for so long' })
  slowAfterDays?: number;

  @Whole({ optional: true, fromQuery: true, max: 3650, description: 'Date as near as this' })
  expiringWithinDays?: number;

  @Choice(['ingredient', 'packaging', 'filling', 'piece', 'box'], { optional: true })
  kind?: string;
}

export class StockLineView {
  @Text()
  lotCode: string;

  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Text()
  kind: string;

  @Choice(['g', 'pc'])
  unit: string;

  @Quantity()
  quantity: string;

  @Quantity({ description: 'Kept for open batches' })
  reservedQuantity: string;

  @Money({ description: 'What is left of what it cost' })
  value: string;

  @Day({ nullable: true })
  lastDay: string | null;

  @Whole({ nullable: true, min: -100_000, description: 'Below nought: past its date' })
  daysLeft: number | null;

  @Whole({ description: 'Days since something was taken' })
  idleDays: number;

  @Flag()
  slow: boolean;

  @Flag()
  held: boolean;

  @Choice(['good', 'expiring', 'expired'])
  state: string;
}

export class ItemValueView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Quantity()
  quantity: string;

  @Money()
  value: string;
}

export class StockValueView {
  @Day()
  on: string;

  @Money()
  value: string;

  @Money()
  slowValue: string;

  @Money()
  expiringValue: string;

  @Money()
  expiredValue: string;

  @Money()
  heldValue: string;

  @ListOf(() => StockLineView)
  lots: StockLineView[];

  @ListOf(() => ItemValueView)
  items: ItemValueView[];
}

export class PurchasePriceView {
  @Day()
  day: string;

  @Text()
  supplier: string;

  @Quantity()
  quantity: string;

  @Money()
  price: string;

  @Money({ description: 'Per kg, or per piece' })
  unitPrice: string;

  @DecimalText({ places: 2, negative: true, nullable: true, description: 'Against the one before' })
  changePercent: string | null;
}

export class CountDto {
  @Text({ max: 40 })
  lotCode: string;

  @Quantity({ description: 'In the lot’s unit; 0 when nothing is there' })
  countedQuantity: string;
}

export class StocktakeDto {
  @ListOf(() => CountDto, { min: 1, max: 500 })
  counts: CountDto[];

  @Text({ optional: true, max: 500 })
  note?: string;
}

export class StocktakeLineView {
  @Text()
  lotCode: string;

  @Text()
  itemName: string;

  @Quantity()
  bookedQuantity: string;

  @Quantity()
  countedQuantity: string;

  @DecimalText({ places: 3, negative: true })
  difference: string;

  @DecimalText({ places: 4, negative: true, description: 'Money; below nought: missing' })
  cost: string;
}

export class StocktakeView {
  @Id()
  id: string;

  @Day()
  countedOn: string;

  @Text({ nullable: true })
  note: string | null;

  @DecimalText({ places: 4, negative: true })
  cost: string;

  @ListOf(() => StocktakeLineView)
  lines: StocktakeLineView[];
}
