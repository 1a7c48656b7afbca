export { judgeBatch, type BatchTest, type BatchVerdict, type BatchWeighing } from './batch-test';
export {
  E_MARK_HEIGHT_MM,
  minDigitHeightMm,
  minXHeightMm,
  panelAreaOf,
  panelTypeHeightMm,
  US_X_HEIGHT_MM,
} from './digit-heights';
export { quantityMark, type PackContents, type QuantitySettings } from './net-quantity';
export { netWeightUs } from './ounces';
export { limitsOf, tolerableNegativeErrorG, type Limits } from './tolerable-error';
