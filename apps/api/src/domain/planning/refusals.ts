import type { Refused } from '../refusals/result';

export type PlanningRefusal =
  | (Refused & { readonly code: 'plan-item-unknown' })
  | (Refused & { readonly code: 'plan-recipe-contains-itself' })
  | (Refused & { readonly code: 'plan-quantity-unusable' });
