export { flowOf, type Flow, type FlowStep, type WeighedLine } from './flow';
export { carryThrough, yieldRatio, type CarriedStep, type LossKind, type StepLoss } from './losses';
export type { ScalingRefusal } from './refusals';
export {
  massYield,
  scaleRecipe,
  type ScalableLine,
  type ScalableRecipe,
  type ScaledLine,
  type ScaledRecipe,
} from './scale';
export type { ScalingTarget } from './target';
export { scaleTree, type ScaledStage, type ScaledTree } from './tree';
