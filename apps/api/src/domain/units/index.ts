export { Decimal, ZERO, sum } from './decimal';
export { apportion, roundTo, CENT_PLACES, MONEY_PLACES, QUANTITY_PLACES } from './rounding';
