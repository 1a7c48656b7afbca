import { Temporal } from 'temporal-polyfill';
import { Decimal, ZERO, sum } from '../units';

/** What went over the counter of one item on one day that the counter was open. */
export interface CounterSale {
  readonly day: string;
  readonly quantity: Decimal;
}

/** A stretch of the year in which more or less is sold, as the person who knows the shop says. */
export interface Season {
  readonly name: string;
  /** Inclusive, YYYY-MM-DD. */
  readonly fromDay: string;
  readonly toDay: string;
  /** 2 means twice an ordinary day. */
  readonly factor: Decimal;
}

export interface ForecastBasis {
  readonly sales: readonly CounterSale[];
  /** Past and coming seasons: past ones are taken out of the level, coming ones put on. */
  readonly seasons: readonly Season[];
  /** Days on which the counter is open, Monday = 1 … Sunday = 7. */
  readonly openWeekdays: readonly number[];
}

export interface ForecastDay {
  readonly day: string;
  /** Not rounded; planning rounds up. */
  readonly expected: Decimal;
  readonly season: string | undefined;
}

export interface Forecast {
  readonly days: readonly ForecastDay[];
  /** Mean sale of an ordinary open day, seasons taken out. */
  readonly level: Decimal;
  readonly weekdayFactor: ReadonlyMap<number, Decimal>;
  /** Days that the forecast rests on: of weekdays on which the counter will be open. */
  readonly observedDays: number;
  /** Fewer than four weeks: shown as a guess, because a weekday was seen three times at most. */
  readonly thin: boolean;
}

const WEEKS_FOR_A_WEEKDAY = 4;
const ONE = new Decimal(1);

const weekdayOf = (day: string): number => Temporal.PlainDate.from(day).dayOfWeek;

const mean = (values: readonly Decimal[]): Decimal =>
  values.length === 0 ? ZERO : sum(values).dividedBy(values.length);

/** Of overlapping seasons the shortest counts: a holiday inside a high season. */
const seasonOf = (seasons: readonly Season[], day: string): Season | undefined => {
  const length = ({ fromDay, toDay }: Season): number =>
    Temporal.PlainDate.from(fromDay).until(toDay, { largestUnit: 'days' }).days;
  return seasons
    .filter(({ fromDay, toDay, factor }) => fromDay <= day && day <= toDay && !factor.isZero())
    .sort((a, b) => length(a) - length(b))[0];
};

/**
 * Expected sale a day = level × weekday factor × season factor: the multiplicative ratio-to-mean
 * form of classical decomposition (textbook method, from memory). It is enough for a counter with
 * a weekly rhythm and known holidays, and a person can check it by hand. A weekday that was never
 * seen takes factor one.
 */
export const forecastCounter = (basis: ForecastBasis, fromDay: string, days: number): Forecast => {
  const weekdays = [...new Set(basis.openWeekdays)];
  const ordinary = basis.sales
    .map(({ day, quantity }) => ({
      weekday: weekdayOf(day),
      quantity: quantity.dividedBy(seasonOf(basis.seasons, day)?.factor ?? ONE),
    }))
    .filter(({ weekday }) => weekdays.includes(weekday));
  const meanOf = new Map(
    weekdays.flatMap((weekday): [number, Decimal][] => {
      const own = ordinary.filter((sale) => sale.weekday === weekday);
      return own.length === 0 ? [] : [[weekday, mean(own.map(({ quantity }) => quantity))]];
    }),
  );
  // The mean of the weekday means, so that a week with a missing Monday doesn't tilt the level.
  const level = mean([...meanOf.values()]);
  const weekdayFactor = new Map(
    [...meanOf].map(([weekday, value]): [number, Decimal] => [
      weekday,
      level.isZero() ? ONE : value.dividedBy(level),
    ]),
  );
  const start = Temporal.PlainDate.from(fromDay);
  const forecast = Array.from({ length: days }, (_, offset) => start.add({ days: offset }))
    .filter((day) => weekdays.includes(day.dayOfWeek))
    .map((date): ForecastDay => {
      const day = date.toString();
      const season = seasonOf(basis.seasons, day);
      const expected = level
        .times(weekdayFactor.get(date.dayOfWeek) ?? ONE)
        .times(season?.factor ?? ONE);
      return { day, expected, season: season?.name };
    });
  const thin = ordinary.length < WEEKS_FOR_A_WEEKDAY * weekdays.length;
  return { days: forecast, level, weekdayFactor, observedDays: ordinary.length, thin };
};

/**
 * Season factor seen in a past stretch: mean sale there over the ordinary level, weekday by weekday
 * so that a short stretch with two Saturdays isn't taken for a boom. None without both kinds of day.
 */
export const observedSeasonFactor = (
  sales: readonly CounterSale[],
  fromDay: string,
  toDay: string,
): Decimal | undefined => {
  const inside = sales.filter(({ day }) => fromDay <= day && day <= toDay);
  const outside = sales.filter(({ day }) => day < fromDay || toDay < day);
  const expected = inside.map(({ day }) =>
    mean(outside.filter((sale) => weekdayOf(sale.day) === weekdayOf(day)).map((s) => s.quantity)),
  );
  const base = sum(expected);
  if (inside.length === 0 || expected.some((value) => value.isZero())) return undefined;
  return sum(inside.map(({ quantity }) => quantity)).dividedBy(base);
};
