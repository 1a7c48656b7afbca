import type { Refused } from '../refusals/result';

/** Why something can't be put on paper. */
export interface PrintingRefusal extends Refused {
  readonly code: 'text-not-printable' | 'label-does-not-fit' | 'stock-not-valid';
}
