export type { PrintingRefusal } from './refusals';
export { readStock } from './read-stock';
export {
  checkStock,
  labelSize,
  PAGE_SIZES_MM,
  placeOf,
  type DieCutStock,
  type LabelStock,
  type PageSize,
  type Place,
  type RollStock,
  type SheetStock,
} from './stock';
