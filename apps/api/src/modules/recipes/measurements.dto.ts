import {
  Choice,
  DecimalText,
  Flag,
  Id,
  Instant,
  ListOf,
  Nested,
  Text,
  Whole,
} from '../../platform/dto';

export class MeasurementView {
  @Id()
  readingId: string;

  @Choice(['water_activity', 'ph', 'brix'])
  measure: string;

  @DecimalText({ places: 4 })
  value: string;

  @Text({ nullable: true })
  instrument: string | null;

  @DecimalText({ nullable: true, places: 4, description: 'Null: no calibration that passed' })
  uncertainty: string | null;

  @Flag({ description: 'A calibrated water activity; the latest of them overrides the estimate' })
  usable: boolean;

  @Text({ nullable: true })
  lotCode: string | null;

  @Text({ nullable: true })
  batchCode: string | null;

  @Instant()
  at: string;
}

export class EstimateAgainstMeasurementView {
  @Id()
  recipeVersionId: string;

  @Text()
  itemName: string;

  @Whole()
  number: number;

  @DecimalText({ places: 2 })
  estimate: string;

  @DecimalText({ places: 4 })
  measured: string;

  @DecimalText({ places: 4, negative: true, description: 'Estimate less measurement' })
  difference: string;

  @Text({ nullable: true })
  lotCode: string | null;

  @Instant()
  at: string;
}

export class ModelRecordView {
  @Whole()
  pairs: number;

  @DecimalText({ places: 4, negative: true, description: 'Above nought reads high, the safe side' })
  bias: string;

  @DecimalText({ places: 4 })
  rootMeanSquare: string;

  @DecimalText({ places: 4, negative: true })
  largest: string;
}

export class OwnTableView {
  @ListOf(() => EstimateAgainstMeasurementView)
  rows: EstimateAgainstMeasurementView[];

  @Nested(() => ModelRecordView, { nullable: true })
  record: ModelRecordView | null;

  @Text({ max: 400 })
  caution: string;
}
