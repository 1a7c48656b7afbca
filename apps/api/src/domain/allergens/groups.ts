import type { Allergen, Exclusion } from '../specification';

/**
 * Annex II of Regulation (EU) No 1169/2011 as amended by Delegated Regulation (EU) 2024/2512:
 * fourteen kinds, of which cereals and nuts are named by species.
 */
export const ANNEX_II_GROUPS = {
  cereals: ['wheat', 'rye', 'barley', 'oats'],
  crustaceans: ['crustaceans'],
  egg: ['egg'],
  fish: ['fish'],
  peanut: ['peanut'],
  soy: ['soy'],
  milk: ['milk'],
  nuts: [
    'almond', 'hazelnut', 'walnut', 'cashew', 'pecan', 'brazil_nut', 'pistachio', 'macadamia',
  ],
  celery: ['celery'],
  mustard: ['mustard'],
  sesame: ['sesame'],
  sulphites: ['sulphites'],
  lupin: ['lupin'],
  molluscs: ['molluscs'],
} as const satisfies Readonly<Record<string, readonly Allergen[]>>; // prettier-ignore

export const ANNEX_II: readonly Allergen[] = Object.values(ANNEX_II_GROUPS).flat();

/** The nine of FALCPA and the FASTER Act (from memory); sulphites are declared beside them. */
export const US_NINE_GROUPS = {
  milk: ['milk'],
  egg: ['egg'],
  fish: ['fish'],
  shellfish: ['crustaceans'],
  tree_nuts: [
    'almond', 'hazelnut', 'walnut', 'cashew', 'pecan', 'brazil_nut', 'pistachio', 'macadamia',
    'pine_nut',
  ],
  wheat: ['wheat'],
  peanut: ['peanut'],
  soy: ['soy'],
  sesame: ['sesame'],
} as const satisfies Readonly<Record<string, readonly Allergen[]>>; // prettier-ignore

export const US_NINE: readonly Allergen[] = Object.values(US_NINE_GROUPS).flat();

/** Which allergen a claimed exclusion can take out; another pairing is a mistake of the sheet. */
export const EXCLUSION_SOURCES: Readonly<Record<Exclusion, readonly Allergen[]>> = {
  wheat_glucose_syrup: ['wheat'],
  wheat_maltodextrin: ['wheat'],
  barley_glucose_syrup: ['barley'],
  cereal_distillate: ANNEX_II_GROUPS.cereals,
  fish_gelatine_carrier: ['fish'],
  fish_gelatine_fining: ['fish'],
  refined_soya_oil: ['soy'],
  natural_tocopherols_soya: ['soy'],
  soya_phytosterols: ['soy'],
  soya_stanol_esters: ['soy'],
  whey_distillate: ['milk'],
  lactitol: ['milk'],
  nut_distillate: ANNEX_II_GROUPS.nuts,
  mustard_behenic_acid: ['mustard'],
};
