export {
  ALLERGENS,
  EXCLUSIONS,
  PRESENCES,
  presenceOf,
  type Allergen,
  type AllergenOrigin,
  type AllergenStatement,
  type Exclusion,
  type Presence,
} from './allergen-codes';
export {
  COCOA_PARTS,
  FAT_KINDS,
  POLYOL_KINDS,
  SINGLE_PARTS,
  statedGrams,
  SUGAR_KINDS,
  type CocoaSolids,
  type CompositionPer100g,
  type FatKind,
  type PolyolKind,
  type SugarKind,
} from './composition';
export {
  FUNCTIONAL_CLASSES,
  VEGETABLE_FATS,
  type Additive,
  type Flavouring,
  type FunctionalClass,
  type IngredientFlags,
  type IngredientNode,
  type VegetableFat,
} from './ingredient';
export { GROUP_KINDS, type Grouping, type GroupKind } from './grouping';
export { LANGUAGES, type FullText, type Language, type LocalText } from './language';
export { NUTRIENTS, type Nutrient, type NutritionPer100g } from './nutrition';
export { parseSpecification, type Parsed } from './parse';
export { readComposition, readNutrition } from './parse-figures';
export { readLocalText } from './parse-ingredient';
export { JsonReader, saidProblems, type Problem } from './reader';
export {
  CHOCOLATE_KINDS,
  type ChocolateKind,
  type Specification,
  type SpecificationStatements,
} from './specification';
export { NAME_LENGTH, textProblem, tidyText } from './text';
export { specificationToJson, type SpecificationJson } from './to-json';
