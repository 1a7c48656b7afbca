import { Choice, Id, Instant, JsonObject, Text, Whole } from '../../platform/dto';

export const SPECIFICATION_STATES = ['draft', 'approved', 'withdrawn'] as const;

const stated = {
  ingredient: {
    description: 'The ingredient with what it is made of: names by language, percent, additive, …',
  },
  allergens: { description: 'contains, may_contain, absent or unknown, by allergen' },
  composition: { nullable: true, description: 'Grams in 100 g, as decimal text' },
  nutrition: { nullable: true, description: 'Nutrients in 100 g, as decimal text' },
  statements: { description: 'Sulphites, legal chocolate name, cross-contact figures' },
} as const;

export class SpecificationDto {
  @JsonObject(stated.ingredient)
  ingredient: Record<string, unknown>;

  @JsonObject(stated.allergens)
  allergens: Record<string, unknown>;

  @JsonObject({ ...stated.composition, optional: true })
  composition?: Record<string, unknown> | null;

  @JsonObject({ ...stated.nutrition, optional: true })
  nutrition?: Record<string, unknown> | null;

  @JsonObject({ ...stated.statements, optional: true })
  statements?: Record<string, unknown>;

  @Text({ optional: true, nullable: true, max: 300, description: 'The supplier’s document' })
  document?: string | null;
}

export class CreateSpecificationDto extends SpecificationDto {
  @Id()
  supplierId: string;
}

export class SpecificationView {
  @Id()
  id: string;

  @Id()
  itemId: string;

  @Id()
  supplierId: string;

  @Text()
  supplierName: string;

  @Whole({ description: 'Version of what this supplier states of this item' })
  number: number;

  @Choice(SPECIFICATION_STATES)
  state: string;

  @JsonObject(stated.ingredient)
  ingredient: Record<string, unknown>;

  @JsonObject(stated.allergens)
  allergens: Record<string, unknown>;

  @JsonObject(stated.composition)
  composition: Record<string, unknown> | null;

  @JsonObject(stated.nutrition)
  nutrition: Record<string, unknown> | null;

  @JsonObject(stated.statements)
  statements: Record<string, unknown>;

  @Text({ nullable: true })
  document: string | null;

  @Instant({ nullable: true })
  approvedAt: string | null;

  @Text({ nullable: true })
  approvedBy: string | null;

  @Whole()
  version: number;
}
