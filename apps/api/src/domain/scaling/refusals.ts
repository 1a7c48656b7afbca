import type { Refused } from '../refusals/result';

/** Why a recipe can't be scaled to what was asked. */
export type ScalingRefusal =
  | (Refused & { readonly code: 'scaling-target-unfit' })
  | (Refused & { readonly code: 'recipe-yields-nothing' })
  | (Refused & { readonly code: 'step-loses-everything' });
