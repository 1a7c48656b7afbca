import { Temporal } from 'temporal-polyfill';
import type { DateMark } from '../label/content';
import type { MarketRules } from '../market';
import type { Language } from '../specification';
import { wordsIn } from '../words';

export type DateForm = 'day_month' | 'day_month_year' | 'month_year' | 'year';

/**
 * The shortest form that Annex X of Regulation (EU) No 1169/2011 takes as sufficient: up to three
 * months day and month; up to eighteen months month and year; longer, the year. "Three months" is
 * counted on the calendar from the day of making. A use-by always has its day and month.
 */
export const shortestForm = (madeOn: Temporal.PlainDate, last: Temporal.PlainDate): DateForm => {
  if (Temporal.PlainDate.compare(last, madeOn.add({ months: 3 })) <= 0) return 'day_month';
  const long = Temporal.PlainDate.compare(last, madeOn.add({ months: 18 })) > 0;
  return long ? 'year' : 'month_year';
};

/**
 * The last day a printed form promises. An "end" form names the month or year that has wholly
 * passed on the real date, so that printing it never lengthens the life.
 */
export const promisedDay = (form: DateForm, last: Temporal.PlainDate): Temporal.PlainDate => {
  if (form === 'day_month' || form === 'day_month_year') return last;
  const ends = form === 'month_year' ? endOfMonth(last) : endOfYear(last);
  if (Temporal.PlainDate.compare(ends, last) <= 0) return ends;
  return form === 'month_year'
    ? endOfMonth(last.subtract({ months: 1 }))
    : endOfYear(last.subtract({ years: 1 }));
};

const endOfMonth = (day: Temporal.PlainDate): Temporal.PlainDate =>
  day.with({ day: day.daysInMonth });
const endOfYear = (day: Temporal.PlainDate): Temporal.PlainDate => day.with({ month: 12, day: 31 });

const two = (figure: number): string => String(figure).padStart(2, '0');

const MONTHS = [
  'JAN', 'FEB', 'MAR', 'APR', 'MAY', 'JUN', 'JUL', 'AUG', 'SEP', 'OCT', 'NOV', 'DEC',
]; // prettier-ignore

/** As `NOV 1, 2027`: in the United States 01/11 would be read as the eleventh of January. */
const writtenWithName = (form: DateForm, day: Temporal.PlainDate): string => {
  const month = MONTHS[day.month - 1] ?? '';
  if (form === 'day_month') return `${month} ${day.day}`;
  if (form === 'day_month_year') return `${month} ${day.day}, ${day.year}`;
  return form === 'month_year' ? `${month} ${day.year}` : String(day.year);
};

const written = (form: DateForm, day: Temporal.PlainDate): string => {
  if (form === 'day_month') return `${two(day.day)}/${two(day.month)}`;
  if (form === 'day_month_year') return `${two(day.day)}/${two(day.month)}/${day.year}`;
  return form === 'month_year' ? `${two(day.month)}/${day.year}` : String(day.year);
};

export interface DateAsk {
  readonly madeOn: Temporal.PlainDate;
  readonly last: Temporal.PlainDate;
  readonly kind: 'best_before' | 'use_by';
  /** `full` prints day, month and year, which is lawful for every length of life. */
  readonly form: 'full' | 'shortest';
  readonly languages: readonly Language[];
  /** Left out, day first. */
  readonly market?: Pick<MarketRules, 'dateStyle'>;
}

const formOf = ({ madeOn, last, kind, form }: DateAsk): DateForm => {
  if (form === 'full' || kind === 'use_by') return 'day_month_year';
  const shortest = shortestForm(madeOn, last);
  // A month or year that had passed before the food was made would be nonsense on the pack.
  const tooEarly = Temporal.PlainDate.compare(promisedDay(shortest, last), madeOn) < 0;
  return tooEarly ? 'day_month_year' : shortest;
};

/** The date mark in all languages of a label. */
export const dateMark = (ask: DateAsk): DateMark => {
  const form = formOf(ask);
  const promised = promisedDay(form, ask.last);
  const toEnd = form === 'month_year' || form === 'year';
  const words = ask.languages.map((language) => {
    const { bestBefore, bestBeforeEnd, useBy } = wordsIn(language).label;
    if (ask.kind === 'use_by') return { language, text: useBy };
    return { language, text: toEnd ? bestBeforeEnd : bestBefore };
  });
  const write = ask.market?.dateStyle === 'month_name' ? writtenWithName : written;
  return { words, date: write(form, promised), machineDate: promised.toString(), kind: ask.kind };
};

/** The day a printed "end" date means: the last of its month. */
export const machineDayOf = (month: Temporal.PlainYearMonth): Temporal.PlainDate =>
  month.toPlainDate({ day: month.daysInMonth });

/**
 * Directive 2011/91/EU (from memory): a date with day and month, uncoded and in that order, may
 * stand for the lot; so may a pack whose largest side is under 10 cm².
 */
export const lotMarkRequired = (mark: DateMark, largestSurfaceCm2: number): boolean => {
  const hasDay = /^\d{2}\/\d{2}(\/\d{4})?$/.test(mark.date);
  return !hasDay && largestSurfaceCm2 >= 10;
};

/** The lot with the L that sets it apart from other marks. */
export const lotMark = (lotCode: string): string => (/^L/i.test(lotCode) ? lotCode : `L${lotCode}`);
