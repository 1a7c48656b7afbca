export type { ReceivingRefusal } from './refusals';
export { receiveLine, type GoodsLine, type HoldToPlace, type ReceivedLot } from './receive-line';
