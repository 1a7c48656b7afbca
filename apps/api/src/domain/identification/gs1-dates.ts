import { Temporal } from 'temporal-polyfill';
import { ok, refuse, type Result } from '../refusals/result';
import type { IdentificationRefusal } from './refusals';
import { say } from '../words/say';

/**
 * The century of a two-digit year (GS1 General Specifications, 7.12): the year is read within 49
 * years back and 50 years ahead of the current one.
 */
export const fullYear = (twoDigits: number, currentYear: number): number => {
  const century = currentYear - (currentYear % 100);
  const ahead = twoDigits - (currentYear % 100);
  if (ahead >= 51) return century - 100 + twoDigits;
  if (ahead <= -50) return century + 100 + twoDigits;
  return century + twoDigits;
};

const notADate = (text: string): Result<never, IdentificationRefusal> =>
  refuse({
    code: 'gs1-data-not-valid',
    detail: say`${text.slice(0, 20)} isn't a date in the form YYMMDD.`,
    facts: { text: text.slice(0, 20) },
  });

/** Reads YYMMDD. Day 00 means the last day of that month. */
export const readGs1Date = (
  text: string,
  today: Temporal.PlainDate,
): Result<Temporal.PlainDate, IdentificationRefusal> => {
  if (!/^[0-9]{6}$/.test(text)) return notADate(text);
  const year = fullYear(Number(text.slice(0, 2)), today.year);
  const month = Number(text.slice(2, 4));
  const day = Number(text.slice(4, 6));
  if (month < 1 || month > 12) return notADate(text);
  const { daysInMonth } = Temporal.PlainYearMonth.from({ year, month });
  if (day > daysInMonth) return notADate(text);
  return ok(Temporal.PlainDate.from({ year, month, day: day === 0 ? daysInMonth : day }));
};

/** Writes YYMMDD with the real day: 00 is read but never written. */
export const writeGs1Date = (day: Temporal.PlainDate): string => {
  const two = (value: number): string => String(value).padStart(2, '0');
  return two(day.year % 100) + two(day.month) + two(day.day);
};
