import type { Refused } from '../refusals/result';

/** Why something can't be sent out, or come back, as asked. */
export interface DispatchRefusal extends Refused {
  readonly code: 'not-for-sale' | 'life-too-short' | 'returned-too-much';
}
