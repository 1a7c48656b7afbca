import type { Allergen, FunctionalClass, GroupKind } from '../../specification';
import type { en } from './en';

export type LabelWord = keyof (typeof en)['label'];
export type NutrientWord = keyof (typeof en)['nutrients'];

/** All words that a label needs in one language. */
export interface Catalogue {
  readonly label: Readonly<Record<LabelWord, string>>;
  readonly groups: Readonly<Record<GroupKind, string>>;
  readonly classes: Readonly<Record<FunctionalClass, string>>;
  readonly nutrients: Readonly<Record<NutrientWord, string>>;
  readonly allergens: Readonly<Record<Allergen, string>>;
}
