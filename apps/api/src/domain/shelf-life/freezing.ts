import { Temporal } from 'temporal-polyfill';
import { ok, refuse, type Result } from '../refusals/result';
import type { DateReason } from './lot-date';
import type { ShelfLifeRefusal } from './refusals';
import { say } from '../words/say';

export interface FreezableLot {
  readonly code: string;
  readonly day: Temporal.PlainDate | null;
  readonly frozenOn: Temporal.PlainDate | null;
  readonly thawedOn: Temporal.PlainDate | null;
  /** Days after thawing by its recipe version; null when freezing isn't allowed. */
  readonly lifeAfterThawDays: number | null;
}

/** Whether a lot may go into the freezer: by its recipe's rule, once, and before its date. */
export const mayFreeze = (
  lot: FreezableLot,
  on: Temporal.PlainDate,
): Result<DateReason, ShelfLifeRefusal> => {
  if (lot.lifeAfterThawDays === null) {
    return refuse({
      code: 'freezing-not-allowed',
      detail: say`The recipe of lot ${lot.code} states no life after thawing, so it may not be frozen.`,
    });
  }
  if (lot.frozenOn) {
    return refuse({
      code: 'frozen-once-already',
      detail: say`Lot ${lot.code} was frozen on ${lot.frozenOn.toString()}. Freezing stops the clock once.`,
    });
  }
  if (!lot.day || Temporal.PlainDate.compare(on, lot.day) > 0) {
    return refuse({
      code: 'frozen-too-late',
      detail: lot.day
        ? say`Lot ${lot.code} is past its date (${lot.day.toString()}): freezing brings nothing back.`
        : say`Lot ${lot.code} has no date, so there is no clock to stop.`,
    });
  }
  const left = on.until(lot.day).days;
  return ok({
    kind: 'frozen',
    day: null,
    lotCode: null,
    rules: false,
    text: say`Frozen on ${on.toString()} with ${left} days left; on thawing it keeps ${Math.min(left, lot.lifeAfterThawDays)} days at most. Until then its date stays as it was.`,
  });
};

/**
 * Date after thawing: what was left when it was frozen, at most the recipe's life after thawing,
 * counted from the day of thawing.
 */
export const thawedDate = (
  lot: FreezableLot,
  on: Temporal.PlainDate,
): Result<{ day: Temporal.PlainDate; reason: DateReason }, ShelfLifeRefusal> => {
  const { frozenOn, day, lifeAfterThawDays } = lot;
  const order = frozenOn ? Temporal.PlainDate.compare(on, frozenOn) : -1;
  if (!frozenOn || !day || lifeAfterThawDays === null || lot.thawedOn || order < 0) {
    return refuse({
      code: 'not-frozen',
      detail: say`Lot ${lot.code} isn’t in the freezer on ${on.toString()}, so it can’t be thawed.`,
    });
  }
  const left = frozenOn.until(day).days;
  const keeps = Math.min(left, lifeAfterThawDays);
  const thawed = on.add({ days: keeps });
  const text = say`Thawed on ${on.toString()}: ${left} days were left when it was frozen, ${lifeAfterThawDays} are allowed after thawing, so ${keeps} days from now. It may not be frozen again.`;
  return ok({
    day: thawed,
    reason: { kind: 'thawed', day: thawed.toString(), lotCode: null, rules: true, text },
  });
};
