import { DecimalText, Grams, Id, ListOf, Quantity, Text, Whole } from '../../platform/dto';

export class CarriedStepView {
  @Text()
  step: string;

  @Quantity()
  intoGrams: string;

  @Quantity()
  outGrams: string;

  @Quantity()
  lostGrams: string;
}

export class ScaledLineView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Text()
  unit: string;

  @Text()
  role: string;

  @Quantity({ description: 'To weigh out: rounded to the milligram, or up to whole pieces' })
  quantity: string;

  @ListOf(() => CarriedStepView, { description: 'What each step with a loss should leave of it' })
  steps: CarriedStepView[];
}

export class ScaledStageView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @DecimalText({ places: 6 })
  factor: string;

  @ListOf(() => ScaledLineView)
  lines: ScaledLineView[];

  @Grams({ nullable: true })
  expectedGrams: string | null;

  @Whole({ nullable: true, description: 'Good pieces to expect' })
  expectedPieces: number | null;

  @Whole({ nullable: true, description: 'Pieces to cast or pack, before rejects' })
  piecesToMake: number | null;

  @Whole({ nullable: true, description: 'Whole trays' })
  trays: number | null;
}

export class StoreLineView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Text()
  unit: string;

  @Quantity()
  quantity: string;
}

export class ScaledView {
  @ListOf(() => ScaledStageView, { description: 'What was asked for first, then what it needs' })
  stages: ScaledStageView[];

  @ListOf(() => StoreLineView, { description: 'What has no recipe: to take from the store' })
  fromStore: StoreLineView[];
}
