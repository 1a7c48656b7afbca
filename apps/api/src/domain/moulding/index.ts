export { cavityVolumes, type Cavity, type CavityShape, type CavityVolumes } from './cavity';
export {
  chocolateShare,
  LEAST_CHOCOLATE_PERCENT,
  pieceMasses,
  type ChocolateShare,
  type PieceMasses,
} from './piece';
export type { MouldingRefusal } from './refusals';
export {
  weighedParts,
  weighingStatistics,
  type PieceWeighings,
  type Sample,
  type WeighedParts,
} from './weighings';
