import { Temporal } from 'temporal-polyfill';

/** The lots that a trace starts from, and in words how they were found. */
export interface Roots {
  readonly ids: readonly string[];
  readonly because: string;
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

export const count = (ids: readonly string[]): string =>
  ids.length === 1 ? '1 lot' : `${String(ids.length)} lots`;
