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
  Wholes,
} from '../../platform/dto';
import { PageQuery } from '../../platform/paging/page';

export const BATCH_KINDS = ['cook', 'charge', 'cast', 'pack'] as const;
export const BATCH_STATES = ['open', 'finished', 'abandoned'] as const;
export const OUTPUT_ROLES = ['product', 'rework'] as const;
export const LOSS_KINDS = [
  'steam',
  'held_back',
  'scrapings',
  'rejects',
  'samples',
  'other',
] as const;
export const DRAW_ROLES = [
  'base',
  'infusion',
  'shell',
  'filling',
  'cap',
  'decoration',
  'slot',
  'packaging',
  'rework',
] as const;
export const MEASURES = [
  'temp_c',
  'humidity_percent',
  'water_activity',
  'ph',
  'brix',
  'mass_g',
] as const;

export class BatchQuery extends PageQuery {
  @Choice(BATCH_STATES, { optional: true })
  state?: string;

  @Choice(BATCH_KINDS, { optional: true })
  kind?: string;

  @Id({ optional: true, description: 'Batches of this item' })
  itemId?: string;
}

export class OpenBatchDto {
  @Id({ description: 'What is to be made; it needs a recipe' })
  itemId: string;

  @Id({ optional: true, description: 'Version of the recipe; the newest when left out' })
  recipeVersionId?: string;

  @Quantity({ optional: true, description: 'Grams or good pieces to be made, by the item’s unit' })
  plannedQuantity?: string;

  @Whole({ optional: true, min: 1, max: 10_000, description: 'Whole trays, instead of a quantity' })
  plannedTrays?: number;

  @Id({ optional: true, nullable: true })
  placeId?: string | null;
}

export class DrawDto {
  @Text({ optional: true, max: 40, description: 'Code of the lot; or name a tank instead' })
  lotCode?: string;

  @Id({ optional: true, description: 'Draws from the lot that is in this tank now' })
  tankId?: string;

  @Quantity({ description: 'In the lot’s unit' })
  quantity: string;

  @Choice(DRAW_ROLES, {
    optional: true,
    description: 'By the recipe’s line of the item; an item outside the recipe needs it stated',
  })
  role?: string;

  @Text({ optional: true, max: 500, description: 'Why an item outside the recipe was taken' })
  reason?: string;
}

export class ReasonDto {
  @Text({ max: 500 })
  reason: string;
}

export class ReadingDto {
  @Choice(MEASURES)
  measure: string;

  @DecimalText({ places: 4, negative: true })
  value: string;

  @Text({ optional: true, max: 120, description: 'Title of the recipe’s step' })
  step?: string;

  @Text({ optional: true, max: 120 })
  instrument?: string;

  @Text({ optional: true, max: 500, description: 'What was done about a value outside its limits' })
  correctiveAction?: string;
}

export class MouldUseDto {
  @Text({ max: 40 })
  mouldTag: string;

  @Whole({ min: 1, max: 1000 })
  cavitiesFilled: number;

  @Wholes({ min: 1, max: 1000, optional: true })
  rejectCavities?: number[];
}

export class LossDto {
  @Choice(LOSS_KINDS)
  kind: string;

  @Grams()
  massGrams: string;

  @Text({ optional: true, max: 40, description: 'The drawn lot that it was taken from' })
  lotCode?: string;

  @Text({ optional: true, max: 500 })
  note?: string;
}

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
}
