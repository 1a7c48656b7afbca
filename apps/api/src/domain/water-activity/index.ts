export {
  estimateWaterActivity,
  GANACHE_ERROR,
  LOWEST_MODELLED,
  SERUM_ERROR,
  type BoundWater,
  type OutsideModel,
  type WaterActivity,
  type WaterActivityEstimate,
} from './estimate';
export {
  modelRecord,
  rulingWaterActivity,
  type MeasuredWaterActivity,
  type ModelRecord,
  type RulingWaterActivity,
} from './measured';
export { dissolved, norrish } from './norrish';
export {
  checkSaltTemperatures,
  judgeCalibration,
  REFERENCE_SALTS,
  saltWaterActivity,
  type CalibrationVerdict,
  type ReferenceSalt,
  type SaltCheck,
} from './saturated-salts';
export {
  DAIRY_ASH,
  ETHANOL,
  LACTOSE_CAP,
  POLYOL_CONSTANTS,
  SODIUM_CHLORIDE,
  solutesOf,
  SUCROSE_CAP,
  SUGAR_CONSTANTS,
  syrupConstants,
  type Solute,
  type SoluteConstants,
} from './solutes';
