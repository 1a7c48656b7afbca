import type { Sentence } from '../words/say';

/**
 * The outcome of a domain function that may refuse. Expected failures are values, never exceptions:
 * a service unwraps a result with `orRefuse`, which aborts the transaction.
 */
export type Result<T, R extends Refused = Refused> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly refusal: R };

/**
 * A refusal: a stable code, and the facts needed to say in plain words what was refused, why, and
 * what to do next. Each domain area declares its own closed union of refusals and adds it to
 * `Refusal` in `refusals/index.ts`; the table in `platform/problems` must then gain a row per code.
 */
export interface Refused {
  readonly code: string;
  /** One or two plain sentences: what was refused, which thing, and the way out. */
  readonly detail: Sentence;
  /** Further facts for programs (lot codes, quantities as decimal strings). */
  readonly facts?: Readonly<Record<string, unknown>>;
}

export const ok = <T>(value: T): Result<T, never> => ({ ok: true, value });

export const refuse = <R extends Refused>(refusal: R): Result<never, R> => ({
  ok: false,
  refusal,
});
