export {
  COCOA_BUTTER_FORMS_C,
  heatToSetKjPerKg,
  TABLE_CURVES,
  WARMEST_FILLING_C,
  type TemperedProduct,
  type TemperingCurve,
  type TemperingStep,
  type TempWindow,
} from './curves';
export { condensationRisk, dewPointC } from './dew-point';
export {
  isTemperedProduct,
  judgeTempering,
  temperingLimits,
  type TemperingVerdict,
  type TempVerdict,
} from './verdict';
