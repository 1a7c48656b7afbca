export { commonCauses, type CommonCauses, type SuspectedCause } from './common-causes';
export type { Exposure } from './patterns';
export {
  fisherOneSided,
  fisherTwoSided,
  holm,
  riskRatio,
  type RiskRatio,
  type TwoByTwo,
} from './two-by-two';
