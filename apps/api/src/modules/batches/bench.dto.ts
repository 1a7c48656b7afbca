import { ALLERGENS } from '../../domain/specification';
import {
  Choice,
  DecimalText,
  Grams,
  Id,
  ListOf,
  Nested,
  Quantity,
  Text,
  Whole,
  Wholes,
} from '../../platform/dto';
import { LOSS_KINDS, DRAW_ROLES, MEASURES } from './batch-choices';

export class AcceptedAllergenDto {
  @Choice(ALLERGENS)
  allergen: string;

  @Choice(['contains', 'may_contain', 'unknown'])
  after: string;
}

/** What whoever draws a lot of another item has seen and accepts; under their own name. */
export class AcceptanceDto {
  @Id({
    optional: true,
    nullable: true,
    description: 'The recipe’s component that it stands in for; left out when it comes in addition',
  })
  insteadOfItemId?: string | null;

  @ListOf(() => AcceptedAllergenDto, {
    max: 100,
    description: 'Every allergen that the comparison shows as worse, as it shows it',
  })
  allergens: AcceptedAllergenDto[];
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

  @Nested(() => AcceptanceDto, {
    optional: true,
    description: 'Needed for an item outside the recipe; see the comparison under substitutions',
  })
  acceptance?: AcceptanceDto;
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
