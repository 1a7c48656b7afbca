import { Choice, Day, Flag, Grams, Id, Instant, Nested, Text, Whole } from '../../platform/dto';

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
