import { DecimalText, JsonObject, ListOf, Text, Whole } from '../../platform/dto';

export class SharedLineDto {
  @Text({ max: 120, description: 'The machine or bench that is shared' })
  line: string;

  @Text({ max: 40 })
  allergen: string;

  @DecimalText({
    places: 3,
    nullable: true,
    description: 'Protein of the source carried over after cleaning; empty when not measured',
  })
  proteinMgPerKg: string | null;
}

/** What holds for every label of the workshop. */
export class WorkshopLabelSettingsDto {
  @ListOf(() => SharedLineDto, { max: 50 })
  sharedLines: SharedLineDto[];

  @JsonObject({ nullable: true, description: 'Label stock that is offered first' })
  stock: Record<string, unknown> | null;

  @DecimalText({ places: 1, description: 'Percentage points a line may differ from the recipe' })
  toleratedPoints: string;
}

export class WorkshopLabelSettingsView extends WorkshopLabelSettingsDto {
  @Whole({ description: 'Of the workshop: for If-Match' })
  version: number;
}
