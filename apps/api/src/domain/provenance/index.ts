export type { Batch, Draw, Loss, Output } from './batch-weights';
export { fromMilligrams, gramsOf, ratioOf, toMilligrams, WHOLE } from './fixed-point';
export { lotGraph, type LotGraph } from './graph';
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
export { batchesReached, sharesAhead, sharesBehind, type Measure, type Shares } from './shares';
