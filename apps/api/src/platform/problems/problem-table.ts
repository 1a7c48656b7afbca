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
};
