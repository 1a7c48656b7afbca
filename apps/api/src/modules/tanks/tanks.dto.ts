import { Choice, Flag, Grams, Id, ListOf, Quantity, Text } from '../../platform/dto';

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
