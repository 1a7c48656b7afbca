export { epcisDocument } from './document';
export { epcisEvent, type EpcisEvent } from './events';
export type { LotQuantity, TraceFact } from './facts';
export { lotUri, ownUri, type Naming } from './identifiers';
