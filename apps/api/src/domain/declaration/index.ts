export { declare, writeDeclaration, type Declaration, type DeclarationRequest } from './declare';
export { emphasise, listed, plain, textOf, tidyRuns } from './emphasis';
export { finding } from './findings';
export { flavouringName } from './flavouring';
export { totalIngoing, type IngoingLot, type IngoingMix } from './ingoing';
export { labelName, usAllergenName, type AdditiveForm } from './naming';
export { quantify, type Quid } from './quid';
export type { WrittenList } from './render';
export type { WeightedNode } from './weighted';
