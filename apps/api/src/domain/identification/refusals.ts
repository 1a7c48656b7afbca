import type { Refused } from '../refusals/result';

/** What the reading and making of codes may refuse. */
export interface IdentificationRefusal extends Refused {
  readonly code:
    | 'gtin-not-valid'
    | 'gs1-data-not-valid'
    | 'digital-link-not-valid'
    | 'code-pattern-not-valid'
    | 'till-number-not-valid';
}
