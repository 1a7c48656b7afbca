export type { StockRefusal } from './refusals';
export {
  checkQuantity,
  quantityInWords,
  shareOf,
  take,
  type LotOnHand,
  type StockShare,
  type StockUnit,
} from './take';
export { checkUsable, isPastUseBy, type ItemKind, type LotStanding } from './usable';
export { countDifference, removal } from './adjust';
