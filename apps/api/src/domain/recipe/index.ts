export { designedAllergens, leavesOf, type DesignedAllergen } from './allergens';
export { acceptRecipe } from './accept';
export { analyseRecipe, type AnalysisFacts, type RecipeAnalysis } from './analysis';
export type { BookItem, RecipeBook } from './book';
export { refuseCircle } from './circle';
export { compareVersions, type Comparison, type FieldChange, type LineChange } from './compare';
export { linesInGrams, mixRecipe, pieceMassG, type LineInGrams, type MixRefusal } from './mix';
export { designedNutrition } from './nutrition';
export { LINE_ROLES, type RecipeCheck, type RecipeContent, type RecipeStep } from './recipe';
export type { RecipeRefusal } from './refusals';
export { readLosses, readSteps } from './stored';
export {
  compareSubstitution,
  type AllergenChange,
  type Designed,
  type FigureChange,
  type Substitution,
} from './substitution';
