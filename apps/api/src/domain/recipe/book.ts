import type { AllergenStatement, CompositionPer100g, NutritionPer100g } from '../specification';
import type { Decimal } from '../units';
import type { RecipeContent } from './recipe';

/** What a recipe needs to know of one of its components, however deep. */
export interface BookItem {
  readonly id: string;
  readonly name: string;
  readonly unit: 'g' | 'pc';
  /** Grams of one piece; null for what is kept by weight, or when it isn't known. */
  readonly pieceMassG: Decimal | null;
  readonly isPackaging: boolean;
  /** Stated by the specification in force; all null for an item without one. */
  readonly composition: CompositionPer100g | null;
  readonly nutrition: NutritionPer100g | null;
  readonly allergens: AllergenStatement | null;
  /** Composition came from the table of generic ingredients, not from a supplier. */
  readonly isGeneric: boolean;
  /** Its own recipe, when it is made here. */
  readonly recipe: RecipeContent | null;
}

/** Every item that a recipe reaches, by id. It must hold no circle: see `refuseCircle`. */
export type RecipeBook = ReadonlyMap<string, BookItem>;
