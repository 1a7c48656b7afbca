import type { Refused } from '../refusals/result';

/** Why a cost can't be stated. A missing price is refused: unknown is never free. */
export type CostingRefusal =
  | (Refused & { readonly code: 'purchase-price-missing' })
  | (Refused & { readonly code: 'labour-rate-missing' })
  | (Refused & { readonly code: 'recipe-contains-itself' })
  | (Refused & { readonly code: 'no-good-output' })
  | (Refused & { readonly code: 'lot-cost-unknown' });
