export {
  COST_CATEGORIES,
  mergeCost,
  scaleCost,
  totalCost,
  type CostCategory,
  type CostEntry,
} from './cost-entries';
export { designedCost, type CostBasis } from './designed-cost';
export type { Labour, LabourRate, OverheadRule } from './labour-and-overhead';
export { madeCosts, unitCostOf } from './made-cost';
export type { LotCost, MadeBatch, MadeFacts, MadeOutput, ReceivedLot } from './made-facts';
export { recipeFacts, type RecipeFacts, type RecipeLine } from './recipe-facts';
export type { CostingRefusal } from './refusals';
export { atPrice, GRAMS_PER_KG, type UnitPrice } from './unit-price';
export {
  compareCosts,
  roundedParts,
  waterfall,
  type ComparedPart,
  type Waterfall,
} from './waterfall';
