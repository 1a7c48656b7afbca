import type { RefusalCode } from '../../domain/refusals';

export interface ProblemShape {
  readonly status: 400 | 401 | 403 | 404 | 409 | 412 | 413 | 415 | 422 | 428 | 429;
  readonly title: string;
}

/** One row per refusal code; a code without a row does not compile. */
export const problemTable: Readonly<Record<RefusalCode, ProblemShape>> = {
  'not-found': { status: 404, title: 'Not found' },
  'already-exists': { status: 409, title: 'There is one already' },
  'still-in-use': { status: 409, title: 'Still in use' },
  'stale-version': { status: 412, title: 'Changed by someone else meanwhile' },
  'idempotency-key-reused': { status: 422, title: 'Idempotency-Key used before' },
  'not-valid': { status: 422, title: 'Against a rule' },

  'gtin-not-valid': { status: 422, title: 'Not a GTIN' },
  'gs1-data-not-valid': { status: 422, title: 'Not readable as GS1 data' },
  'digital-link-not-valid': { status: 422, title: 'Not a GS1 Digital Link' },
  'code-pattern-not-valid': { status: 422, title: 'Lots can’t be called so' },
  'till-number-not-valid': { status: 422, title: 'Not a till number' },

  'goods-past-use-by': { status: 422, title: 'Past its use-by date' },
  'goods-dates-missing': { status: 422, title: 'A date is missing' },
  'goods-in-the-future': { status: 422, title: 'Not received yet' },
  'temperature-needed': { status: 422, title: 'Temperature on arrival is missing' },
  'lot-held': { status: 409, title: 'This lot is on hold' },
  'lot-refused': { status: 409, title: 'This lot was refused on arrival' },
  'lot-expired': { status: 409, title: 'This lot is past its use-by date' },
  'lot-unspecified': { status: 409, title: 'This lot has no approved specification' },
  'not-enough-on-hand': { status: 409, title: 'Not enough on hand' },
  'pieces-not-whole': { status: 422, title: 'Pieces are whole' },
  'quantity-not-positive': { status: 422, title: 'A quantity is more than nought' },
  'batch-not-open': { status: 409, title: 'This batch is closed' },
  'batch-not-finished': { status: 409, title: 'This batch is not finished' },
  'batch-kind-unfit': { status: 422, title: 'Not done in a batch of this kind' },
  'not-in-recipe': { status: 422, title: 'Not in the recipe' },
  'nothing-drawn': { status: 422, title: 'Nothing was drawn' },
  'nothing-made': { status: 422, title: 'Nothing was made' },
  'batch-does-not-balance': { status: 422, title: 'The batch does not balance' },
  'more-out-than-in': { status: 422, title: 'More came out than went in' },
  'output-not-weighed': { status: 422, title: 'A weight is missing' },
  circle: { status: 409, title: 'A lot would be its own ancestor' },
  'already-reversed': { status: 409, title: 'Reversed already' },
  'split-first': { status: 409, title: 'The pieces changed lot on the way' },
  'mould-not-sound': { status: 409, title: 'This mould is not sound' },
  'mould-in-use': { status: 409, title: 'This mould is in use' },
  'mould-unfit': { status: 422, title: 'Not possible with this mould' },
  'tank-overfull': { status: 409, title: 'More than the tank holds' },
  'tank-empty': { status: 409, title: 'The tank is empty' },
  'tank-holds-another': { status: 409, title: 'The tank holds another chocolate' },
  'not-for-sale': { status: 422, title: 'Not for sale' },
  'life-too-short': { status: 409, title: 'Too little life left' },
  'returned-too-much': { status: 422, title: 'More came back than went out' },
  'scaling-target-unfit': { status: 422, title: 'The recipe can’t be scaled to this' },
  'recipe-yields-nothing': { status: 422, title: 'The recipe yields nothing' },
  'step-loses-everything': { status: 422, title: 'A step loses everything' },
  'lot-is-its-own-ancestor': { status: 409, title: 'A lot would be its own ancestor' },
  'lot-made-twice': { status: 409, title: 'A lot has two origins' },
  'losses-exceed-draws': { status: 409, title: 'More was lost than drawn' },
};
