export {
  foodCodeTableA,
  foodCodeTableB,
  listeriaNotSupported,
  type TableVerdict,
} from './decision-tables';
export { GROWTH_CAUTION, GROWTH_LIMITS, mayGrowAt, type GrowthLimit } from './organisms';
