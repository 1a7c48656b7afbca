import type { Refused } from '../refusals/result';

/** Why a batch can't take, give or end as asked. */
export interface MakingRefusal extends Refused {
  readonly code:
    | 'batch-not-open'
    | 'batch-not-finished'
    | 'batch-kind-unfit'
    | 'part-of-a-part'
    | 'part-too-large'
    | 'not-in-recipe'
    | 'substitute-not-accepted'
    | 'nothing-drawn'
    | 'nothing-made'
    | 'batch-does-not-balance'
    | 'more-out-than-in'
    | 'output-not-weighed'
    | 'circle'
    | 'already-reversed'
    | 'output-used'
    | 'output-not-replaced'
    | 'split-first'
    | 'mould-not-sound'
    | 'mould-in-use'
    | 'mould-unfit'
    | 'tank-overfull'
    | 'tank-empty'
    | 'tank-holds-another';
}
