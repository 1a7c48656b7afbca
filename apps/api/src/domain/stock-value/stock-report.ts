import { Temporal } from 'temporal-polyfill';
import { Decimal, sum } from '../units';

/** A lot with something left of it. */
export interface StockLot {
  readonly lot: string;
  readonly item: string;
  readonly quantity: Decimal;
  /** What is left of what it cost. */
  readonly value: Decimal;
  /** Best-before or use-by; absent: keeps. */
  readonly lastDay?: string;
  /** Day it came in or was made. */
  readonly since: string;
  /** Day of the last draw, dispatch or sample; absent: nothing was taken yet. */
  readonly lastTaken?: string;
  readonly held: boolean;
}

export interface StockLimits {
  /** A lot from which nothing was taken for this long is slow. */
  readonly slowAfterDays: number;
  /** A lot whose date is this near is expiring. */
  readonly expiringWithinDays: number;
}

export interface StockLine extends StockLot {
  readonly idleDays: number;
  readonly slow: boolean;
  /** Negative: past its date. */
  readonly daysLeft: number | undefined;
  readonly state: 'good' | 'expiring' | 'expired';
}

export interface StockReport {
  readonly lines: readonly StockLine[];
  readonly value: Decimal;
  readonly slowValue: Decimal;
  readonly expiringValue: Decimal;
  readonly expiredValue: Decimal;
  readonly heldValue: Decimal;
  readonly byItem: readonly {
    readonly item: string;
    readonly quantity: Decimal;
    readonly value: Decimal;
  }[];
}

const daysBetween = (from: string, to: string): number =>
  Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: 'days' }).days;

/** The stock with what it is worth, lots that go nowhere and lots that run out of life named. */
export const stockReport = (
  lots: readonly StockLot[],
  today: string,
  limits: StockLimits,
): StockReport => {
  const lines = lots.map((lot) => lineOf(lot, today, limits));
  const valueOf = (chosen: (line: StockLine) => boolean): Decimal =>
    sum(lines.filter(chosen).map((line) => line.value));
  const items = [...new Set(lots.map(({ item }) => item))];
  return {
    lines,
    value: valueOf(() => true),
    slowValue: valueOf((line) => line.slow),
    expiringValue: valueOf((line) => line.state === 'expiring'),
    expiredValue: valueOf((line) => line.state === 'expired'),
    heldValue: valueOf((line) => line.held),
    byItem: items.map((item) => {
      const own = lines.filter((line) => line.item === item);
      const quantity = sum(own.map((line) => line.quantity));
      return { item, quantity, value: sum(own.map((line) => line.value)) };
    }),
  };
};

/** The date itself is the last good day, so a lot has expired on the day after. */
const lineOf = (lot: StockLot, today: string, limits: StockLimits): StockLine => {
  const idleDays = Math.max(0, daysBetween(lot.lastTaken ?? lot.since, today));
  const daysLeft = lot.lastDay === undefined ? undefined : daysBetween(today, lot.lastDay);
  const near = daysLeft !== undefined && daysLeft <= limits.expiringWithinDays;
  const state = daysLeft !== undefined && daysLeft < 0 ? 'expired' : near ? 'expiring' : 'good';
  return { ...lot, idleDays, slow: idleDays >= limits.slowAfterDays, daysLeft, state };
};
