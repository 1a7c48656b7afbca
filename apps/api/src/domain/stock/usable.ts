import type { Temporal } from 'temporal-polyfill';
import { ok, refuse, type Result } from '../refusals/result';
import type { StockRefusal } from './refusals';
import { say, type Sentence } from '../words/say';

export type ItemKind = 'ingredient' | 'packaging' | 'filling' | 'piece' | 'box';

/** What decides whether a lot may be used, sold or labelled. */
export interface LotStanding {
  readonly code: string;
  readonly itemName: string;
  readonly itemKind: ItemKind;
  readonly refused: boolean;
  readonly useBy: Temporal.PlainDate | null;
  /** An ingredient's lot pins the specification that was approved when it came in. */
  readonly specified: boolean;
  /** Reasons of the holds that nobody has released. */
  readonly holds: readonly string[];
}

const refuseLot = (
  lot: LotStanding,
  code: StockRefusal['code'],
  why: Sentence,
  wayOut: Sentence,
  facts: Readonly<Record<string, unknown>> = {},
): Result<never, StockRefusal> =>
  refuse({
    code,
    detail: say`Lot ${lot.code} (${lot.itemName}) ${why}. ${wayOut}`,
    facts: { lotCode: lot.code, item: lot.itemName, ...facts },
  });

/** A use-by day is the last day of use. A best-before day that has passed forbids nothing here. */
export const isPastUseBy = (lot: LotStanding, today: Temporal.PlainDate): boolean =>
  lot.useBy !== null && lot.useBy.until(today).sign > 0;

/** Refuses a lot that may not be drawn, packed, labelled or dispatched, and says what to do. */
export const checkUsable = <L extends LotStanding>(
  lot: L,
  today: Temporal.PlainDate,
): Result<L, StockRefusal> => {
  if (lot.refused) {
    return refuseLot(
      lot,
      'lot-refused',
      say`was refused on arrival`,
      say`Send it back; take another lot.`,
    );
  }
  if (lot.itemKind === 'ingredient' && !lot.specified) {
    return refuseLot(
      lot,
      'lot-unspecified',
      say`has no approved specification`,
      say`Enter what the supplier states of it and approve that, or take another lot.`,
    );
  }
  if (lot.holds.length > 0) {
    return refuseLot(
      lot,
      'lot-held',
      say`is on hold: ${lot.holds.join('; ')}`,
      say`Take another lot, or have the hold released by someone who may.`,
      { holds: lot.holds },
    );
  }
  if (lot.useBy !== null && isPastUseBy(lot, today)) {
    return refuseLot(
      lot,
      'lot-expired',
      say`is past its use-by date ${lot.useBy.toString()}`,
      say`Throw it away and book it as wasted; take another lot.`,
      { useBy: lot.useBy.toString() },
    );
  }
  return ok(lot);
};
