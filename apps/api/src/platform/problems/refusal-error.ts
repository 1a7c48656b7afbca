import type { Refusal } from '../../domain/refusals';
import type { Result } from '../../domain/refusals';
import { inEnglish, named, say } from '../../domain/words/say';

/** Carries a refusal out of a transaction, which rolls back, to the problem filter. */
export class RefusalError extends Error {
  constructor(readonly refusal: Refusal) {
    super(inEnglish(refusal.detail));
    this.name = 'RefusalError';
  }
}

/** The value of a result, or the refusal thrown. */
export const orRefuse = <T, R extends Refusal>(result: Result<T, R>): T => {
  if (!result.ok) throw new RefusalError(result.refusal);
  return result.value;
};

/** The value, or a refusal when there is none: `orNotFound(lot, 'lot', code)`. */
export const orNotFound = <T>(value: T | null | undefined, what: string, name: string): T => {
  if (value === null || value === undefined) {
    throw new RefusalError({
      code: 'not-found',
      detail: say`There is no ${named(what)} "${name}" here. Check the code or look it up in the list.`,
    });
  }
  return value;
};
