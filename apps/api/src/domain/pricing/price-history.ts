import { Temporal } from 'temporal-polyfill';
import { inForce, type FromDay } from '../calendar/in-force';
import { Decimal } from '../units';

/** A price of one item on one list, from a day on. Counter prices are gross, trade prices net. */
export interface ListedPrice extends FromDay {
  readonly price: Decimal;
}

export const priceOn = (history: readonly ListedPrice[], day: string): Decimal | undefined =>
  inForce(history, day)?.price;

const REDUCTION_WINDOW_DAYS = 30;

/**
 * The lowest price in the 30 days before a reduction, which an announced reduction must quote
 * (Article 6a of Directive 98/6/EC, inserted by Directive (EU) 2019/2161; from memory). The price
 * that already held when the window opened counts. None when no price held before.
 */
export const lowestBeforeReduction = (
  history: readonly ListedPrice[],
  reducedOn: string,
): Decimal | undefined => {
  const opens = Temporal.PlainDate.from(reducedOn)
    .subtract({ days: REDUCTION_WINDOW_DAYS })
    .toString();
  const inside = history.filter((row) => row.fromDay > opens && row.fromDay < reducedOn);
  const held = inForce(history, opens);
  const prices = [...(held ? [held] : []), ...inside].map((row) => row.price);
  return prices.length === 0 ? undefined : Decimal.min(...prices);
};
