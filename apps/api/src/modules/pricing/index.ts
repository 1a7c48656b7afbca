export { loadBasis, type LoadedBasis } from './cost-basis.queries';
export { CostStepView } from './costs.dto';
export { stepsView } from './costs.view';
export { allPrices, historyOf, insertPrice } from './prices.repository';
export { PricingModule } from './pricing.module';
export { withKey } from './pricing-settings';
export {
  loadNewestRecipes,
  restDaysOf,
  scalableOf,
  USUAL_ROLE,
  type StoredRecipe,
} from './stored-recipe';
