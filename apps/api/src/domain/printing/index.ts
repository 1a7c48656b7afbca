export type { PrintingRefusal } from './refusals';
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
