export {
  loadLotForUse,
  loadLotForUseById,
  loadLotsForUse,
  type LotForUse,
} from './lots-for-use.queries';
export { placeHolds, type HoldKind, type HoldToPlace } from './place-holds';
export { takeFromLot } from './take-from-lot';
