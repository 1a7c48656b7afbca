import type { Refused } from '../refusals/result';

/** Why a lot can't be used, sold or labelled, or not in this quantity. */
export interface StockRefusal extends Refused {
  readonly code:
    | 'lot-held'
    | 'lot-refused'
    | 'lot-expired'
    | 'lot-unspecified'
    | 'not-enough-on-hand'
    | 'pieces-not-whole'
    | 'quantity-not-positive';
}
