export { applyChanges, type Change, type WhatIfBasis } from './apply';
export {
  compareScenarios,
  type Outcome,
  type Scenario,
  type ScenarioOutcome,
  type SoldItem,
} from './compare';
