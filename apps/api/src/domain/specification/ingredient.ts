import type { Decimal } from '../units';
import type { AllergenOrigin } from './allergen-codes';
import type { Grouping } from './grouping';
import type { LocalText } from './language';

/** Functional classes of Regulation (EU) No 1169/2011, Annex VII Part C. */
export const FUNCTIONAL_CLASSES = [
  'acid', 'acidity_regulator', 'anti_caking_agent', 'anti_foaming_agent', 'antioxidant',
  'bulking_agent', 'colour', 'emulsifier', 'emulsifying_salts', 'firming_agent',
  'flavour_enhancer', 'flour_treatment_agent', 'foaming_agent', 'gelling_agent', 'glazing_agent',
  'humectant', 'modified_starch', 'preservative', 'propellent_gas', 'raising_agent', 'sequestrant',
  'stabiliser', 'sweetener', 'thickener',
] as const; // prettier-ignore
export type FunctionalClass = (typeof FUNCTIONAL_CLASSES)[number];

export interface Additive {
  readonly functionalClass: FunctionalClass;
  /** As `E322`; null for a modified starch or a colour of a market that has no E numbers. */
  readonly eNumber: string | null;
  /** Carried over and without effect in the product: not listed, its allergens excepted. */
  readonly carriedOver: boolean;
}

/** What part of a flavouring's flavouring component is from the source it is named after, 0–100. */
export interface Flavouring {
  readonly natural: boolean;
  /** Source by language, as `orange`; null when no source is named. */
  readonly source: LocalText | null;
  /** Per cent by weight of the flavouring component that comes from the source. */
  readonly fromSourcePercent: Decimal | null;
  /** The source's taste is easily recognised (Regulation (EC) No 1334/2008, Article 16(5)). */
  readonly recognisable: boolean;
  /** Imitates chocolate or milk fat: barred from chocolate by Directive 2000/36/EC. */
  readonly imitatesChocolate: boolean;
}

/** Vegetable fats that Directive 2000/36/EC, Annex II lets stand beside cocoa butter. */
export const VEGETABLE_FATS = ['illipe', 'palm', 'sal', 'shea', 'kokum', 'mango', 'other'] as const;
export type VegetableFat = (typeof VEGETABLE_FATS)[number];

/** Facts of an ingredient that a rule asks for. A flag that isn't there is false. */
export interface IngredientFlags {
  /** Water added as such: placed by what is left of it in the finished food. */
  readonly addedWater?: boolean;
  /** Spirits and other volatiles: placed by weight in the finished food. */
  readonly volatile?: boolean;
  readonly polyol?: boolean;
  /** Sugar in the sense of Annex III (mono- and disaccharides added for sweetness). */
  readonly sugar?: boolean;
  readonly aspartame?: boolean;
  /** Chocolate, jam and other compounds whose make-up Union law defines. */
  readonly definedInUnionLaw?: boolean;
  /** A mix of spices or herbs: its list may be left out under 2 %. */
  readonly spiceMix?: boolean;
  /** A food that needs no list of its own, as wine. */
  readonly needsNoList?: boolean;
  /** Characterises the food or stands in its name: its quantity is stated (Article 22). */
  readonly characterises?: boolean;
  /** Used in small amounts for flavour: no quantity is due (Annex VIII 1(a)(iii)). */
  readonly flavouringUse?: boolean;
  readonly liquorice?: boolean;
  readonly processingAid?: boolean;
  readonly fullyHydrogenated?: boolean;
  readonly partlyHydrogenated?: boolean;
  /** A mixture whose parts vary (Annex VII Part A, points 4, 5, 8 and 9): said with its list. */
  readonly varyingProportions?: boolean;
  /** Animal fat other than milk fat; barred from chocolate. */
  readonly otherAnimalFat?: boolean;
  /** Flour or starch; barred from chocolate. */
  readonly flourOrStarch?: boolean;
}

/** An ingredient as a supplier states it, with what it is made of. The root is what is bought. */
export interface IngredientNode {
  /** The name under which it stands on a label. */
  readonly names: LocalText;
  /** Name for the United States where it isn't the English one, as `soy lecithin`. */
  readonly usName?: string;
  /** Per cent of its parent, 0–100; null at the root or when the supplier keeps it back. */
  readonly percent: Decimal | null;
  readonly additive?: Additive;
  readonly flavouring?: Flavouring;
  readonly vegetableFat?: VegetableFat;
  readonly group?: Grouping;
  readonly origins: readonly AllergenOrigin[];
  readonly flags: IngredientFlags;
  /** In the supplier's order, which is descending weight when percentages are kept back. */
  readonly parts: readonly IngredientNode[];
}
