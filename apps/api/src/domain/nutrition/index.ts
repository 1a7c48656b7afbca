export {
  americanDuty,
  europeanDuty,
  usExemption,
  type DutyFacts,
  type NutritionDuty,
} from './duty';
export { energyOf, saltFromSodium, type Energy } from './energy';
export { euPanel, type EuPanelSettings } from './eu-panel';
export {
  euAmount,
  euEnergy,
  percentOfIntake,
  REFERENCE_INTAKES,
  withinTolerance,
  type EuRow,
} from './eu-rounding';
export { mixNutrition, type MixNutrition } from './per-100-g';
export { missingForUs, usPanel, type UsPanelSettings } from './us-panel';
export {
  DAILY_VALUES,
  percentDailyValue,
  usCalories,
  usCholesterol,
  usEnergy,
  usFat,
  usGrams,
  usIron,
  usMineral,
  usSodium,
  usVitaminD,
} from './us-rounding';
export {
  REFERENCE_AMOUNTS_G,
  servingOf,
  servingOfPackage,
  servingOfPieces,
  servingsPerContainer,
  type CandyKind,
  type PackedFood,
  type Serving,
} from './us-serving';
