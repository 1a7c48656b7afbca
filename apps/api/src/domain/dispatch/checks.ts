import type { Temporal } from 'temporal-polyfill';
import { ok, refuse, type Result } from '../refusals/result';
import type { ItemKind } from '../stock/usable';
import type { Decimal } from '../units';
import type { DispatchRefusal } from './refusals';
import { named, say, type Sentence } from '../words/say';

export interface LotToSend {
  readonly code: string;
  readonly itemName: string;
  readonly itemKind: ItemKind;
  readonly bestBefore: Temporal.PlainDate | null;
  readonly useBy: Temporal.PlainDate | null;
}

export interface Receiver {
  /** "the counter", or the customer's name. */
  readonly name: string;
  /** Days of life that must be left when it is sent; nought over the counter. */
  readonly minimumLifeDays: number;
}

/** The earlier of a lot's two days. */
const lastDay = (lot: LotToSend): Temporal.PlainDate | null => {
  const { bestBefore, useBy } = lot;
  if (bestBefore === null || useBy === null) return bestBefore ?? useBy;
  return bestBefore.until(useBy).sign < 0 ? useBy : bestBefore;
};

const days = (count: number): Sentence => (count === 1 ? say`1 day` : say`${count} days`);

/** Boxes and loose pieces are sold, with life enough left, or for a reason that a person states. */
export const checkForSale = <L extends LotToSend>(
  lot: L,
  receiver: Receiver,
  sentOn: Temporal.PlainDate,
  shortLifeReason: string | null,
): Result<L, DispatchRefusal> => {
  if (lot.itemKind !== 'box' && lot.itemKind !== 'piece') {
    return refuse({
      code: 'not-for-sale',
      detail: say`Lot ${lot.code} (${lot.itemName}) is ${named(lot.itemKind)}: only boxes and pieces are sold.`,
      facts: { lotCode: lot.code, kind: lot.itemKind },
    });
  }
  const last = lastDay(lot);
  if (last === null || shortLifeReason !== null) return ok(lot);
  const left = sentOn.until(last).days;
  if (left >= receiver.minimumLifeDays) return ok(lot);
  const life = left < 0 ? say`was at its date on ${last.toString()}` : say`has ${days(left)} left`;
  return refuse({
    code: 'life-too-short',
    detail: say`Lot ${lot.code} (${lot.itemName}) ${life}; ${receiver.name} must have ${days(receiver.minimumLifeDays)} at least. Take a fresher lot, or agree a shorter life with them and write down the reason.`,
    facts: {
      lotCode: lot.code,
      date: last.toString(),
      daysLeft: left,
      minimumLifeDays: receiver.minimumLifeDays,
    },
  });
};

/** No more comes back of a line than went out. */
export const checkReturn = (
  lotCode: string,
  out: Decimal,
  returned: Decimal,
): Result<Decimal, DispatchRefusal> => {
  if (returned.lessThanOrEqualTo(out)) return ok(returned);
  return refuse({
    code: 'returned-too-much',
    detail: say`Only ${out.toFixed()} of lot ${lotCode} are still out on this dispatch, but ${returned.toFixed()} came back. Look at the code on the box: it may be of another dispatch.`,
    facts: { lotCode, stillOut: out.toFixed(), returned: returned.toFixed() },
  });
};
