export { breakEvenUnits } from './break-even';
export {
  marginOfMarkUp,
  marginPercent,
  markUpOfMargin,
  markUpPercent,
  netPriceFor,
  type PriceTarget,
} from './margin';
export { priceWithEnding, type EndingRule } from './price-endings';
export { lowestBeforeReduction, priceOn, type ListedPrice } from './price-history';
export {
  marginWarning,
  quote,
  splitShown,
  type MarginWarning,
  type PriceListKind,
  type Quote,
  type QuoteRule,
} from './quote';
export type { PricingRefusal } from './refusals';
export { unitPriceOf, type UnitPriceRule, type UnitPriceStatement } from './unit-price';
export {
  addVat,
  grossOf,
  splitGross,
  vatRateOn,
  vatTotals,
  type TaxedLine,
  type VatRate,
  type VatSplit,
} from './vat';
