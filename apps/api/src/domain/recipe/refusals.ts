import type { Refused } from '../refusals/result';

/** Why a recipe can't stand as it is written. */
export type RecipeRefusal =
  | (Refused & { readonly code: 'recipe-contains-itself' })
  | (Refused & { readonly code: 'recipe-line-unfit' })
  | (Refused & { readonly code: 'recipe-version-frozen' });
