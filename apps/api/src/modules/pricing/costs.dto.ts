import {
  Choice,
  Day,
  DecimalText,
  Id,
  ListOf,
  Money,
  Quantity,
  Text,
  Texts,
} from '../../platform/dto';

const cents = { places: 2, description: 'Money to the cent' } as const;

export class CostStepView {
  @Choice(['material', 'loss', 'packaging', 'labour', 'overhead'])
  category: string;

  @Text({ description: 'Where in the product the money sits, or the role that worked' })
  part: string;

  @DecimalText(cents)
  amount: string;

  @DecimalText({ ...cents, description: 'Where the step begins in the waterfall' })
  from: string;

  @DecimalText({ ...cents, description: 'Where it ends' })
  to: string;
}

export class CostSourceView {
  @Choice(['material', 'loss', 'packaging', 'labour', 'overhead'])
  category: string;

  @Text()
  part: string;

  @Text({ description: 'The item bought, the role that worked or the overhead rule' })
  source: string;

  @Money()
  amount: string;
}

export class ItemCostView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Choice(['kg', 'pc'], { description: 'What the figures are for one of' })
  per: string;

  @Day()
  on: string;

  @Money()
  cost: string;

  @ListOf(() => CostStepView, { description: 'Sums to the cost in cents' })
  waterfall: CostStepView[];

  @ListOf(() => CostSourceView)
  sources: CostSourceView[];
}

export class CostComparisonView {
  @Choice(['material', 'loss', 'packaging', 'labour', 'overhead'])
  category: string;

  @Text()
  part: string;

  @Money()
  designed: string;

  @Money()
  made: string;

  @DecimalText({ places: 4, negative: true, description: 'Made less designed' })
  difference: string;
}

export class MarginView {
  @Choice(['counter', 'trade'])
  list: string;

  @Money()
  netPrice: string;

  @DecimalText({ places: 2, negative: true })
  marginPercent: string;

  @DecimalText({ places: 2, negative: true, nullable: true })
  markUpPercent: string | null;

  @Text({ nullable: true, description: 'Set when the margin is under the floor' })
  warning: string | null;
}

export class LotCostView {
  @Text()
  lotCode: string;

  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Choice(['kg', 'pc'])
  per: string;

  @Quantity()
  madeQuantity: string;

  @Day()
  madeOn: string;

  @DecimalText(cents)
  lotCost: string;

  @Money({ description: 'Of one good piece or kg' })
  cost: string;

  @ListOf(() => CostStepView)
  waterfall: CostStepView[];

  @ListOf(() => CostComparisonView, { description: 'Empty when the design can’t be costed' })
  comparison: CostComparisonView[];

  @ListOf(() => MarginView)
  margins: MarginView[];

  @Texts({ description: 'Batches whose minutes nobody booked: planned ones stand in' })
  assumedMinutes: string[];
}
