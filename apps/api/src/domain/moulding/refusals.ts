import type { Refused } from '../refusals/result';

/** Why a cavity or a set of weighings can't be computed. */
export type MouldingRefusal =
  | (Refused & { readonly code: 'cavity-measures-impossible' })
  | (Refused & { readonly code: 'weighings-unusable' });
