export { purchasePriceHistory, type PricePoint, type Purchase } from './purchase-prices';
export {
  stockReport,
  type StockLimits,
  type StockLine,
  type StockLot,
  type StockReport,
} from './stock-report';
export {
  valueByAverage,
  valueByLot,
  type StockEvent,
  type StockValueRefusal,
  type Valuation,
} from './valuation';
