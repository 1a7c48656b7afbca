export { CautionView } from './analysis.dto';
export { genericKeyOf, withGenericComposition } from './generic-composition';
export { loadBook, newestSpecifications, statedBy } from './recipe-book.queries';
export { contentOfVersion } from './recipe-content';
export { RecipesModule } from './recipes.module';
export { findVersion, type StoredVersion } from './recipes.repository';
