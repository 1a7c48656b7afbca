import {
  Choice,
  DecimalText,
  Flag,
  Grams,
  Id,
  Ids,
  ListOf,
  Quantity,
  Text,
  Whole,
} from '../../platform/dto';
import { OUTPUT_ROLES, LOSS_KINDS } from './batch-choices';
import { DrawDto, LossDto } from './bench.dto';

export class FinalLossDto {
  @Choice(LOSS_KINDS)
  kind: string;

  @Grams({ optional: true, description: 'Weighed; or count pieces instead' })
  massGrams?: string;

  @Whole({ optional: true, min: 1, max: 100_000, description: 'Rejected or sampled pieces' })
  pieces?: number;

  @Text({ optional: true, max: 40, description: 'The drawn lot that it was taken from' })
  lotCode?: string;

  @Text({ optional: true, max: 500 })
  note?: string;
}

export class OutputDto {
  @Choice(OUTPUT_ROLES, { optional: true, description: 'product unless it is said' })
  role?: string;

  @Id({ optional: true, description: 'The item of rework; a product is the recipe’s item' })
  itemId?: string;

  @Quantity({ description: 'In the item’s unit' })
  quantity: string;

  @Grams({ optional: true, description: 'Weight of all the pieces, when they were weighed' })
  massGrams?: string;

  @Id({ optional: true, nullable: true })
  placeId?: string | null;
}

export class FinishBatchDto {
  @ListOf(() => OutputDto, { min: 1, max: 50 })
  outputs: OutputDto[];

  @ListOf(() => FinalLossDto, { optional: true, max: 50 })
  losses?: FinalLossDto[];

  @DecimalText({ optional: true, places: 2, description: 'Minutes of work' })
  labourMinutes?: string;

  @Text({ optional: true, max: 500, description: 'Why more came out than went in' })
  imbalanceReason?: string;

  @Flag({ optional: true, description: 'Boxes stay one lot although a piece lot changed' })
  keepTogether?: boolean;
}

export class AbandonBatchDto {
  @Text({ max: 500 })
  reason: string;

  @Ids({ optional: true, description: 'Draws that go back to their lots; the rest is thrown away' })
  returnedDrawIds?: string[];
}

export class CorrectionDto {
  @Text({ max: 500 })
  reason: string;

  @Ids({ optional: true })
  reversedDrawIds?: string[];

  @ListOf(() => DrawDto, { optional: true, max: 50 })
  draws?: DrawDto[];

  @Ids({ optional: true })
  reversedLossIds?: string[];

  @ListOf(() => LossDto, { optional: true, max: 50 })
  losses?: LossDto[];

  @Ids({ optional: true, description: 'Lots that never came out as they were counted' })
  reversedOutputIds?: string[];

  @ListOf(() => OutputDto, { optional: true, max: 50, description: 'What came out instead' })
  outputs?: OutputDto[];
}
