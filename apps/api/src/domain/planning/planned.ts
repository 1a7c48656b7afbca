import type { Decimal } from '../units';
import type { Obstacle } from './obstacles';

/**
 * Where something that is used comes from. A planned batch is named `item@day`; further ones of that
 * day, which are kept apart because they last longer, `item@day/2` and so on.
 */
export type Source =
  | { readonly kind: 'lot'; readonly lot: string }
  | { readonly kind: 'begun'; readonly batch: string }
  | { readonly kind: 'planned'; readonly batch: string }
  | { readonly kind: 'bought' };

export interface PlannedUse {
  readonly item: string;
  readonly quantity: Decimal;
  readonly source: Source;
}

export interface PlannedBatch {
  readonly id: string;
  readonly item: string;
  readonly step: 'cook' | 'cast' | 'pack';
  readonly day: string;
  /** Start later than this and something is late, however free the workshop is. */
  readonly latestDay: string;
  readonly readyDay: string;
  /** Good output: grams, pieces or boxes. */
  readonly quantity: Decimal;
  readonly trays: number | undefined;
  readonly design: string | undefined;
  readonly minutes: readonly { readonly resource: string; readonly minutes: number }[];
  readonly uses: readonly PlannedUse[];
  readonly demands: readonly string[];
}

export interface Purchase {
  readonly item: string;
  readonly quantity: Decimal;
  /** Day on which it is used. */
  readonly neededOn: string;
}

export interface Shortfall {
  readonly demand: string;
  readonly item: string;
  readonly missing: Decimal;
  readonly lostValue: Decimal;
  /** What stood in the way while it was tried; empty when its day has passed. */
  readonly because: readonly Obstacle[];
}

export interface Plan {
  /** By day, and within a day what is made before what needs it. */
  readonly batches: readonly PlannedBatch[];
  readonly purchases: readonly Purchase[];
  readonly served: readonly { readonly demand: string; readonly uses: readonly PlannedUse[] }[];
  readonly shortfalls: readonly Shortfall[];
}
