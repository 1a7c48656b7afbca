import type { LocalText } from './language';

/** Kinds that Annex VII Part A of Regulation (EU) No 1169/2011 lets a list name together. */
export const GROUP_KINDS = [
  'fruit', 'vegetable', 'mushroom', 'spice', 'herb', 'vegetable_oil', 'vegetable_fat',
] as const; // prettier-ignore
export type GroupKind = (typeof GROUP_KINDS)[number];

/** What an ingredient may be grouped as; oils and fats only when they are refined. */
export interface Grouping {
  readonly kind: GroupKind;
  /** Its name inside the group where that is shorter: `palm` of `palm oil`. */
  readonly memberNames: LocalText | null;
}
