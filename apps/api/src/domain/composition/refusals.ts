import type { Refused } from '../refusals/result';

/** Why a pot's content can't be computed. */
export type CompositionRefusal =
  | (Refused & { readonly code: 'more-steam-than-water' })
  | (Refused & { readonly code: 'more-lost-than-present' });
