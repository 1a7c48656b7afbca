import { Temporal } from 'temporal-polyfill';
import { say, type Sentence } from '../../domain/words/say';

/** The lots that a trace starts from, and in words how they were found. */
export interface Roots {
  readonly ids: readonly string[];
  readonly because: Sentence;
}

export interface Window {
  readonly from: string;
  readonly to: string;
}

/**
 * In UTC to the millisecond, as `Date` writes it: the rules compare moments as texts, and
 * "08:00:00Z" would sort after "08:00:00.000Z".
 */
export const utc = (instant: string): string =>
  Temporal.Instant.from(instant).toString({ fractionalSecondDigits: 3 });

export const count = (ids: readonly string[]): Sentence =>
  ids.length === 1 ? say`1 lot` : say`${ids.length} lots`;
