export { alcoholGramsPer100g } from './alcohol';
export {
  BALANCE_SOURCE,
  GANACHE_USES,
  ganacheBalance,
  type BalanceFinding,
  type BalanceQuantity,
  type GanacheUse,
} from './balance';
export { compositionCautions, type Caution } from './cautions';
export {
  densityGPerMl,
  fatMix,
  percentOf,
  relativeSweetness,
  withoutSyrups,
  type FatMix,
} from './figures';
export {
  infusionFromWeights,
  infusionPlan,
  RETENTION_GUIDE,
  type InfusionBalance,
  type InfusionWeights,
} from './infusion';
export { makeUpOf, NOTHING, PARTS, plus, times, totalG, type MakeUp, type Part } from './make-up';
export { cook, type Pot, type PotStep } from './pot';
export type { CompositionRefusal } from './refusals';
export { cocoaSolidsG, totalFatG, totalPolyolsG, totalSugarsG } from './totals';
