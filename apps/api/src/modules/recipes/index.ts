export { CautionView } from './analysis.dto';
export { GENERIC_COMPOSITION, genericKeyOf, loadBook, statedBy } from './recipe-book.queries';
export { contentOfVersion } from './recipe-content';
export { RecipesModule } from './recipes.module';
export { findVersion, type StoredVersion } from './recipes.repository';
