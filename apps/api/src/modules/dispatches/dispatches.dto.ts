import { Choice, Day, Flag, Id, ListOf, Quantity, Text } from '../../platform/dto';
import { PageQuery } from '../../platform/paging/page';

export class DispatchLineDto {
  @Text({ max: 40 })
  lotCode: string;

  @Quantity({ description: 'Boxes or pieces' })
  quantity: string;
}

export class CreateDispatchDto {
  @Id({ nullable: true, description: 'null: sold over the counter, to nobody who can be called' })
  customerId: string | null;

  @Day({ optional: true, description: 'Today when left out' })
  sentOn?: string;

  @ListOf(() => DispatchLineDto, { min: 1, max: 200 })
  lines: DispatchLineDto[];

  @Id({ optional: true, nullable: true, description: 'The order it is for; done when all is sent' })
  orderId?: string | null;

  @Text({ optional: true, nullable: true, max: 1000 })
  note?: string | null;

  @Text({ optional: true, max: 500, description: 'Why less life than asked for is agreed' })
  shortLifeReason?: string;
}

export class DispatchQuery extends PageQuery {
  @Id({ optional: true })
  customerId?: string;

  @Flag({ optional: true, fromQuery: true, description: 'true: sales over the counter only' })
  counter?: boolean;

  @Day({ optional: true })
  from?: string;

  @Day({ optional: true })
  to?: string;
}

export class CounterDayQuery {
  @Day()
  from: string;

  @Day()
  to: string;
}

export class ReturnLineDto {
  @Text({ max: 40 })
  lotCode: string;

  @Quantity()
  quantity: string;

  @Choice(['restocked', 'wasted'], { description: 'Back on the shelf, or thrown away' })
  outcome: string;
}

export class ReturnDto {
  @Text({ max: 500 })
  reason: string;

  @ListOf(() => ReturnLineDto, { min: 1, max: 200 })
  lines: ReturnLineDto[];
}
