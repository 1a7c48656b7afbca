export type { Batch, BatchInMilligrams, Draw, Loss, Output } from './batch-weights';
export {
  fromMilligrams,
  gramsOf,
  gramsText,
  milligramsOf,
  ratioOf,
  ratioText,
  toMilligrams,
  WHOLE,
} from './fixed-point';
export { lotGraph, lotGraphInMilligrams, type LotGraph } from './graph';
export {
  makeUp,
  provenance,
  provenanceOf,
  reach,
  type Contribution,
  type Part,
  type ReachedLot,
} from './provenance';
export type { ProvenanceRefusal } from './refusals';
export {
  amountsBehind,
  batchesReached,
  sharesAhead,
  sharesBehind,
  type Measure,
  type Shares,
} from './shares';
