import { Choice, DecimalText, Grams, Id, Quantity, Text, Whole, Wholes } from '../../platform/dto';
import { LOSS_KINDS, DRAW_ROLES, MEASURES } from './batch-choices';

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
