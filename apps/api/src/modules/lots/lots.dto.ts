import {
  Choice,
  Day,
  Flag,
  Grams,
  Id,
  Instant,
  ListOf,
  Money,
  Quantity,
  Text,
} from '../../platform/dto';
import { PageQuery } from '../../platform/paging/page';
import { ITEM_KINDS, UNITS } from '../items';

export const LOT_STATES = ['on_hand', 'on_hold', 'expired', 'empty', 'refused'] as const;
export const ADJUSTMENTS = ['counted', 'wasted', 'sampled'] as const;

export class LotQuery extends PageQuery {
  @Id({ optional: true, description: 'Id of the item' })
  item?: string;

  @Choice(ITEM_KINDS, { optional: true, description: 'Kind of the item' })
  kind?: string;

  @Choice(LOT_STATES, { optional: true })
  state?: (typeof LOT_STATES)[number];

  @Id({ optional: true, description: 'Id of the place' })
  place?: string;

  @Day({ optional: true, description: 'Only lots on hand whose date is before this day' })
  'expiring-before'?: string;
}

export class HoldView {
  @Id()
  id: string;

  @Text()
  kind: string;

  @Text()
  reason: string;

  @Instant()
  placedAt: string;

  @Text()
  placedBy: string;

  @Instant({ nullable: true })
  releasedAt: string | null;

  @Text({ nullable: true })
  releasedBy: string | null;

  @Text({ nullable: true })
  releaseReason: string | null;
}

export class LotView {
  @Id()
  id: string;

  @Text()
  code: string;

  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Choice(ITEM_KINDS)
  itemKind: string;

  @Choice(UNITS)
  unit: string;

  @Quantity()
  madeQuantity: string;

  @Grams()
  madeMassGrams: string;

  @Quantity()
  onHandQuantity: string;

  @Grams()
  onHandMassGrams: string;

  @Money({ description: 'Value of what is on hand' })
  onHandCost: string;

  @Day({ nullable: true })
  bestBefore: string | null;

  @Day({ nullable: true })
  useBy: string | null;

  @Day()
  madeOn: string;

  @Flag({ description: 'Past its use-by date today' })
  expired: boolean;

  @Flag()
  refused: boolean;

  @Text({
    nullable: true,
    description: 'Why it was taken back: it never came out of its batch as it was counted',
  })
  takenBackBecause: string | null;

  @Flag({ description: 'At least one hold stands' })
  onHold: boolean;

  @Id({ nullable: true })
  placeId: string | null;

  @Text({ nullable: true })
  placeName: string | null;

  @Text({ nullable: true, description: 'Lot code of the supplier, for goods that came in' })
  supplierLotCode: string | null;

  @Text({ nullable: true })
  supplierName: string | null;

  @Text({ nullable: true, description: 'Code of the batch that made it' })
  batchCode: string | null;

  @Choice(['product', 'rework'], { nullable: true })
  outputRole: string | null;

  @Id({ nullable: true })
  specificationId: string | null;

  @Id({ nullable: true })
  recipeVersionId: string | null;

  @ListOf(() => HoldView, { description: 'All holds, latest first' })
  holds: HoldView[];
}

export class MovementView {
  @Id()
  id: string;

  @Text()
  kind: string;

  @Quantity({ description: 'Signed' })
  quantity: string;

  @Grams({ description: 'Signed' })
  massGrams: string;

  @Instant()
  at: string;

  @Text()
  by: string;

  @Text({ nullable: true })
  reason: string | null;

  @Text({ nullable: true, description: 'Batch that it was drawn into or made by' })
  batchCode: string | null;

  @Text({ nullable: true })
  dispatchCode: string | null;

  @Id({ nullable: true, description: 'The movement that it puts right' })
  reversesId: string | null;

  @Flag({ description: 'Put right by a later one' })
  reversed: boolean;
}

export class PlaceHoldDto {
  @Text({ max: 500 })
  reason: string;
}

export class ReleaseHoldDto {
  @Text({ max: 500 })
  reason: string;
}

export class AdjustmentDto {
  @Choice(ADJUSTMENTS, {
    description: 'counted: quantity is what is there now; wasted, sampled: quantity that left',
  })
  kind: (typeof ADJUSTMENTS)[number];

  @Quantity()
  quantity: string;

  @Text({ max: 500 })
  reason: string;
}

export class ReversalDto {
  @Text({ max: 500 })
  reason: string;
}

export class MoveDto {
  @Id()
  placeId: string;
}

export class PinSpecificationDto {
  @Id()
  specificationId: string;

  @Text({ max: 500 })
  reason: string;
}
