import {
  Choice,
  Day,
  Flag,
  Grams,
  Id,
  Instant,
  ListOf,
  Nested,
  Quantity,
  Text,
  Whole,
} from '../../platform/dto';

export class CreateTankDto {
  @Text({ max: 120 })
  name: string;

  @Id({ description: 'The chocolate that it holds' })
  itemId: string;

  @Grams({ description: 'Grams that it holds' })
  capacityGrams: string;
}

export class ChangeTankDto {
  @Text({ optional: true, max: 120 })
  name?: string;

  @Id({ optional: true, description: 'Only while it is empty' })
  itemId?: string;

  @Grams({ optional: true })
  capacityGrams?: string;

  @Flag({ optional: true })
  active?: boolean;
}

export class ChargeLineDto {
  @Text({ max: 40 })
  lotCode: string;

  @Quantity({ description: 'In the lot’s unit' })
  quantity: string;

  @Flag({ optional: true, description: 'Rework that goes back in, though it is another item' })
  rework?: boolean;
}

export class ChargeDto {
  @ListOf(() => ChargeLineDto, { min: 1, max: 20 })
  lots: ChargeLineDto[];
}

export class EmptyingDto {
  @Choice(['wasted', 'kept'], {
    description: 'Where the heel went: thrown away, or kept as its lot',
  })
  outcome: string;

  @Flag({ description: 'Cleaned: only then the chain of what may be in the tank ends' })
  cleaned: boolean;

  @Text({ optional: true, nullable: true, max: 1000 })
  note?: string | null;
}

export class TankLotView {
  @Text()
  lotCode: string;

  @Grams()
  onHandGrams: string;

  @Day({ nullable: true })
  bestBefore: string | null;

  @Day({ nullable: true })
  useBy: string | null;

  @Flag()
  held: boolean;
}

export class TankView {
  @Id()
  id: string;

  @Text()
  name: string;

  @Text()
  tag: string;

  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Grams()
  capacityGrams: string;

  @Nested(() => TankLotView, { nullable: true, description: 'What is in it now' })
  currentLot: TankLotView | null;

  @Instant({ nullable: true, description: 'When it was last emptied and cleaned' })
  cleanSince: string | null;

  @Flag()
  active: boolean;

  @Whole()
  version: number;
}

export class ChargeView {
  @Id()
  batchId: string;

  @Text()
  batchCode: string;

  @Text({ description: 'The tank’s lot from now on' })
  lotCode: string;

  @Grams()
  heelGrams: string;

  @Grams()
  addedGrams: string;

  @Nested(() => TankView)
  tank: TankView;
}

export class EmptyingView {
  @Id()
  id: string;

  @Text({ nullable: true })
  lotCode: string | null;

  @Grams()
  heelGrams: string;

  @Choice(['wasted', 'kept', 'nothing_left'])
  outcome: string;

  @Flag()
  cleaned: boolean;

  @Text({ nullable: true })
  note: string | null;

  @Instant()
  at: string;
}
