import type { Refused } from '../refusals/result';

/** Why a delivery line can't be booked as it was typed. */
export interface ReceivingRefusal extends Refused {
  readonly code:
    'goods-past-use-by' | 'goods-dates-missing' | 'goods-in-the-future' | 'temperature-needed';
}
