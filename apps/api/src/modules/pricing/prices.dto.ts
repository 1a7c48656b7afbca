import {
  Choice,
  Day,
  DecimalText,
  Flag,
  Id,
  ListOf,
  Money,
  Nested,
  Text,
} from '../../platform/dto';
import { PaperQuery } from '../papers';
import { ItemCostView } from './costs.dto';
import { PRICE_LISTS, PriceRuleView } from './pricing-settings.dto';

const cents = { places: 2 } as const;
const percent = { places: 2, negative: true, nullable: true } as const;

export class PriceQuery {
  @Choice(PRICE_LISTS, { optional: true, description: 'counter unless it is said' })
  list?: 'counter' | 'trade';

  @Day({ optional: true, description: 'Today when left out' })
  on?: string;
}

export class PriceListPdfQuery extends PaperQuery {
  @Choice(PRICE_LISTS, { optional: true, description: 'counter unless it is said' })
  list?: 'counter' | 'trade';

  @Day({ optional: true, description: 'Today when left out' })
  on?: string;
}

export class BreakEvenQuery extends PriceQuery {
  @Money({ description: 'Money to be earned back, as a month’s rent' })
  fixedCost: string;
}

export class SetPriceDto {
  @Choice(PRICE_LISTS)
  list: 'counter' | 'trade';

  @Money({ description: 'With VAT at the counter, without in trade' })
  price: string;

  @Day()
  fromDay: string;

  @Text({ optional: true, max: 500 })
  note?: string;
}

export class ListedPriceView {
  @Id()
  id: string;

  @Choice(PRICE_LISTS)
  list: string;

  @Money()
  price: string;

  @Day()
  fromDay: string;

  @Text({ nullable: true })
  note: string | null;

  @Flag({ description: 'It is the one that holds today' })
  holds: boolean;
}

export class PricedView {
  @DecimalText(cents)
  net: string;

  @DecimalText(cents)
  vat: string;

  @DecimalText(cents)
  gross: string;

  @DecimalText({ places: 3 })
  vatPercent: string;

  @DecimalText({ ...percent, description: 'Left of the net price after the cost' })
  marginPercent: string | null;

  @DecimalText({ ...percent, description: 'On top of the cost' })
  markUpPercent: string | null;

  @DecimalText({ ...cents, nullable: true, description: 'Null when no weight is known' })
  pricePerKg: string | null;

  @Choice(['required', 'same_as_price', 'below_weight', 'mixed_assortment'], { nullable: true })
  unitPriceDuty: string | null;

  @Text({ nullable: true, description: 'Set when the margin is under the floor' })
  warning: string | null;
}

export class CurrentPriceView extends PricedView {
  @Day()
  fromDay: string;

  @DecimalText({ ...cents, nullable: true, description: 'Lowest of the 30 days before it began' })
  lowestBefore: string | null;
}

export class ItemPriceView {
  @Choice(PRICE_LISTS)
  list: string;

  @Nested(() => ItemCostView)
  cost: ItemCostView;

  @Nested(() => PriceRuleView)
  rule: PriceRuleView;

  @Money({ description: 'Net price that meets the target exactly' })
  exactNet: string;

  @Nested(() => PricedView, { description: 'With the ending that the rule picks' })
  proposed: PricedView;

  @Nested(() => CurrentPriceView, { nullable: true })
  current: CurrentPriceView | null;
}

export class PriceListRowView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Text()
  kind: string;

  @DecimalText({ places: 3, nullable: true })
  netWeightGrams: string | null;

  @Nested(() => CurrentPriceView, { nullable: true, description: 'Null: not priced yet' })
  current: CurrentPriceView | null;

  @DecimalText({ places: 4, nullable: true, description: 'Null when it can’t be costed' })
  cost: string | null;

  @Text({ nullable: true, description: 'Why it can’t be costed or priced' })
  problem: string | null;
}

export class PriceListAnswer {
  @Choice(PRICE_LISTS)
  list: 'counter' | 'trade';

  @Day()
  on: string;

  @ListOf(() => PriceListRowView)
  rows: PriceListRowView[];
}

export class BreakEvenView {
  @DecimalText({ places: 0 })
  units: string;

  @Money()
  variableCost: string;

  @Money()
  netPrice: string;
}
