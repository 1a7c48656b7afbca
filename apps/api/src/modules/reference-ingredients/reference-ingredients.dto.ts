import { DecimalText, Flag, Id, JsonObject, ListOf, Text } from '../../platform/dto';

export class ReferenceIngredientView {
  @Text()
  key: string;

  @Text()
  nameEn: string;

  @Text()
  nameFr: string;

  @JsonObject({ description: 'Per 100 g, as a specification states it' })
  composition: Record<string, unknown>;

  @Text()
  source: string;

  @Flag({ description: 'Some figure was computed or assumed' })
  derived: boolean;

  @Text({ nullable: true, max: 400 })
  note: string | null;

  @DecimalText({ places: 2 })
  statedGrams: string;

  @Flag({ description: 'The row doesn’t come to 97–103 g' })
  flagged: boolean;
}

export class ReferenceIngredientsView {
  @ListOf(() => ReferenceIngredientView)
  items: ReferenceIngredientView[];

  @Text({ max: 300 })
  caution: string;
}

export class ChooseGenericDto {
  @Text({ nullable: true, max: 60, description: 'Key of a generic row; null takes it away' })
  key: string | null;
}

export class GenericChoiceView {
  @Id()
  itemId: string;

  @Text({ nullable: true })
  key: string | null;

  @Text({ max: 300 })
  caution: string;
}
