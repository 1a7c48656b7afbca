import { US_ALLERGEN_NAMES } from '../allergens';
import type { MarketRules } from '../market';
import type { Allergen, IngredientNode, Language } from '../specification';
import { colonIn, wordsIn } from '../words';
import { flavouringName } from './flavouring';

export type AdditiveForm = 'name' | 'e_number';

/** Name of an ingredient on a label of a market; null when that language is missing. */
export const labelName = (
  node: IngredientNode,
  market: MarketRules,
  language: Language,
): string | null => {
  if (market.additiveStyle === 'name_only' && node.usName !== undefined) return node.usName;
  if (node.flavouring && market.additiveStyle === 'class_first') {
    return flavouringName(node.flavouring, node.names, language);
  }
  const name = node.names[language];
  return name === undefined ? null : name + hydrogenation(node, language);
};

const hydrogenation = (node: IngredientNode, language: Language): string => {
  const words = wordsIn(language).label;
  if (node.flags.fullyHydrogenated) return ` (${words.fullyHydrogenated})`;
  return node.flags.partlyHydrogenated ? ` (${words.partlyHydrogenated})` : '';
};

export interface AdditiveName {
  /** As `emulsifier: `; empty where a market doesn't lead with the class. */
  readonly lead: string;
  readonly name: string;
  /** As ` (preservative)`. */
  readonly tail: string;
}

/** Class and name, or class and E number, as Annex VII Part C and 21 CFR 101.22(j) want them. */
export const additiveName = (
  node: IngredientNode,
  name: string,
  market: MarketRules,
  language: Language,
  form: AdditiveForm,
): AdditiveName => {
  const { additive } = node;
  if (!additive) return { lead: '', name, tail: '' };
  const functionalClass = wordsIn(language).classes[additive.functionalClass];
  if (market.additiveStyle === 'name_only') {
    const preserves = additive.functionalClass === 'preservative';
    return { lead: '', name, tail: preserves ? ` (${functionalClass})` : '' };
  }
  if (additive.functionalClass === 'modified_starch') {
    return { lead: '', name: functionalClass, tail: '' };
  }
  const identity = form === 'e_number' ? (additive.eNumber ?? name) : name;
  return { lead: `${functionalClass}${colonIn(language)} `, name: identity, tail: '' };
};

/** Name after "Contains" in the United States, with the species of a fish or shellfish. */
export const usAllergenName = (allergen: Allergen, species: string | undefined): string => {
  if (species !== undefined) return species;
  return US_ALLERGEN_NAMES[allergen] ?? wordsIn('en').allergens[allergen];
};
