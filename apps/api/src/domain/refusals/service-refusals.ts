import type { Refused } from './result';

/** Refusals that any slice may give. */
export interface ServiceRefusal extends Refused {
  readonly code:
    | 'not-found'
    | 'already-exists'
    | 'still-in-use'
    | 'stale-version'
    | 'idempotency-key-reused'
    | 'work-stopped'
    | 'not-valid';
}
