import type { Refused } from '../refusals/result';

/** Why a life or a date is refused. */
export type ShelfLifeRefusal =
  | (Refused & { readonly code: 'shelf-life-document-missing' })
  | (Refused & { readonly code: 'shelf-life-beyond-limits' })
  | (Refused & { readonly code: 'freezing-not-allowed' })
  | (Refused & { readonly code: 'frozen-once-already' })
  | (Refused & { readonly code: 'frozen-too-late' })
  | (Refused & { readonly code: 'not-frozen' });
