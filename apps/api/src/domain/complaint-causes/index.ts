export {
  commonCauses,
  type CommonCauses,
  type Exposure,
  type SuspectedCause,
} from './common-causes';
export {
  fisherOneSided,
  fisherTwoSided,
  holm,
  riskRatio,
  type RiskRatio,
  type TwoByTwo,
} from './two-by-two';
