import type { Refused } from '../refusals/result';

export type PricingRefusal =
  | (Refused & { readonly code: 'margin-out-of-range' })
  | (Refused & { readonly code: 'vat-rate-missing' })
  | (Refused & { readonly code: 'price-endings-unusable' })
  | (Refused & { readonly code: 'never-breaks-even' });
