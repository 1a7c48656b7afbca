export { LIFE_BANDS, lifeBand, mouldFreeDays, type LifeBand } from './bands';
export { mayFreeze, thawedDate, type FreezableLot } from './freezing';
export {
  LIFE_BASES,
  type ComponentLife,
  type LifeBasis,
  type LifeFacts,
  type LifeLimit,
  type LimitKind,
  type StatedLife,
} from './limits';
export {
  lotDate,
  ownDate,
  type DatedDraw,
  type DateKind,
  type DateReason,
  type DateReasonKind,
  type LotDate,
  type LotDateFacts,
} from './lot-date';
export type { ShelfLifeRefusal } from './refusals';
export { acceptLife, shelfLife, type ShelfLife } from './shelf-life';
