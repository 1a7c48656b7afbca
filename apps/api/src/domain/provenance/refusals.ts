import type { Refused } from '../refusals/result';

/** Why a set of batches can't be read as one graph of lots with weights. */
export type ProvenanceRefusal =
  | (Refused & { readonly code: 'lot-is-its-own-ancestor' })
  | (Refused & { readonly code: 'lot-made-twice' })
  | (Refused & { readonly code: 'losses-exceed-draws' });
