import type { Refused } from '../refusals/result';

/** Why a label isn't printed, or a decision about one isn't taken. */
export interface LabelRefusal extends Refused {
  readonly code: 'label-kept-back' | 'contact-not-open';
}
