import { Choice, Id, Quantity, Whole } from '../../platform/dto';
import { PageQuery } from '../../platform/paging/page';
import { BATCH_KINDS, BATCH_STATES } from './batch-choices';

export class BatchQuery extends PageQuery {
  @Choice(BATCH_STATES, { optional: true })
  state?: string;

  @Choice(BATCH_KINDS, { optional: true })
  kind?: string;

  @Id({ optional: true, description: 'Batches of this item' })
  itemId?: string;
}

export class OpenPartDto {
  @Quantity({ description: 'Grams or good pieces that this pot or go makes, by the item’s unit' })
  plannedQuantity: string;

  @Id({ optional: true, nullable: true, description: 'Where the head is, unless it is said' })
  placeId?: string | null;
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
