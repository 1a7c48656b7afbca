/**
 * Allergens by the species that the law makes a label name. Annex II of Regulation (EU)
 * No 1169/2011 lists fourteen kinds; cereals and nuts are split here into their species. Pine nut
 * and coconut are no Annex II nuts, but have stood on the United States' tree-nut list.
 */
export const ALLERGENS = [
  'wheat', 'rye', 'barley', 'oats',
  'crustaceans', 'egg', 'fish', 'peanut', 'soy', 'milk',
  'almond', 'hazelnut', 'walnut', 'cashew', 'pecan', 'brazil_nut', 'pistachio', 'macadamia',
  'celery', 'mustard', 'sesame', 'sulphites', 'lupin', 'molluscs',
  'pine_nut', 'coconut',
] as const; // prettier-ignore
export type Allergen = (typeof ALLERGENS)[number];

/** What a supplier says of one allergen. What isn't stated is `unknown`, never `absent`. */
export const PRESENCES = ['contains', 'may_contain', 'absent', 'unknown'] as const;
export type Presence = (typeof PRESENCES)[number];

export type AllergenStatement = Readonly<Partial<Record<Allergen, Presence>>>;

/** What the supplier states of one allergen; silence is `unknown`. */
export const presenceOf = (statement: AllergenStatement, allergen: Allergen): Presence =>
  statement[allergen] ?? 'unknown';

/** Derivations that Annex II takes out, each an attribute of an ingredient and never of a name. */
export const EXCLUSIONS = [
  'wheat_glucose_syrup',
  'wheat_maltodextrin',
  'barley_glucose_syrup',
  'cereal_distillate',
  'fish_gelatine_carrier',
  'fish_gelatine_fining',
  'refined_soya_oil',
  'natural_tocopherols_soya',
  'soya_phytosterols',
  'soya_stanol_esters',
  'whey_distillate',
  'lactitol',
  'nut_distillate',
  'mustard_behenic_acid',
] as const;
export type Exclusion = (typeof EXCLUSIONS)[number];

/** An allergen that an ingredient comes from. */
export interface AllergenOrigin {
  readonly allergen: Allergen;
  /** The Annex II exclusion that the supplier claims for this ingredient. */
  readonly exclusion?: Exclusion;
  /** The supplier certifies that no protein of the source is left (United States, refined oils). */
  readonly freeOfProtein?: boolean;
  /** Species by its everyday name, for fish and crustaceans in the United States. */
  readonly species?: string;
}
