import type { Decimal } from '../units';
import type { Allergen, AllergenStatement } from './allergen-codes';
import type { CompositionPer100g } from './composition';
import type { IngredientNode } from './ingredient';
import type { NutritionPer100g } from './nutrition';

/** Sales names of Directive 2000/36/EC, Annex I Part A, which a supplier may state for a lot. */
export const CHOCOLATE_KINDS = [
  'chocolate', 'chocolate_vermicelli', 'couverture', 'gianduja', 'milk_chocolate',
  'milk_chocolate_vermicelli', 'milk_couverture', 'milk_gianduja', 'cream_chocolate',
  'skimmed_milk_chocolate', 'family_milk_chocolate', 'white_chocolate', 'powdered_chocolate',
  'drinking_chocolate',
] as const; // prettier-ignore
export type ChocolateKind = (typeof CHOCOLATE_KINDS)[number];

/** Further stated facts that a rule asks for. */
export interface SpecificationStatements {
  /** Total SO2, mg in a kilogram; null when not stated. */
  readonly sulphiteMgPerKg: Decimal | null;
  /** Glycyrrhizinic acid, mg in a kilogram; null when not stated. */
  readonly glycyrrhizinicMgPerKg: Decimal | null;
  /** The legal name that the supplier sells it under; null when it is no chocolate. */
  readonly chocolateKind: ChocolateKind | null;
  /** Cross-contact in the supplier's works, mg of total protein of the source in a kilogram. */
  readonly crossContactProteinMgPerKg: Readonly<Partial<Record<Allergen, Decimal>>>;
  /** Per cent by weight of the ingredient that is protein of the allergen it comes from. */
  readonly allergenProteinPercent: Readonly<Partial<Record<Allergen, Decimal>>>;
}

/** What a supplier states of an ingredient. */
export interface Specification {
  readonly ingredient: IngredientNode;
  readonly allergens: AllergenStatement;
  /** Null when the supplier doesn't state it: nothing is then computed from it. */
  readonly composition: CompositionPer100g | null;
  readonly nutrition: NutritionPer100g | null;
  readonly statements: SpecificationStatements;
}
