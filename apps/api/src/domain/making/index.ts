export {
  checkAcceptance,
  type Acceptance,
  type AllergenToAccept,
  type ForeignDraw,
} from './acceptance';
export {
  checkBalance,
  settleBatch,
  type BatchSums,
  type BatchWeights,
  type CountedOutput,
  type SettledOutput,
} from './balance';
export {
  checksDue,
  judge,
  standingDeviations,
  checkPointOf,
  stepChecks,
  type StepCheck,
  type TakenReading,
  type Verdict,
} from './checks';
export { checkCharge, type ChargeLine, type TankToCharge } from './charge';
export { impossibleReading } from './measures';
export { checkMouldUse, type Filling, type MouldForUse } from './moulds';
export type { MakingRefusal } from './refusals';
export { missingOf, shareOut, type PartOfMaking } from './share-out';
export { checkTakeBack, type OutputToTakeBack } from './take-back';
