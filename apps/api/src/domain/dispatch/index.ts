export { checkForSale, checkReturn, type LotToSend, type Receiver } from './checks';
export type { DispatchRefusal } from './refusals';
