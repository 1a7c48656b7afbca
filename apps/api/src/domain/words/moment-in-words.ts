import { Temporal } from 'temporal-polyfill';
import { MONTHS } from './months';
import { named, say, type Sentence } from './say';

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/** An instant inside a sentence, as the clock of the workshop shows it: `28 Feb 2027, 09:05`. */
export const momentInWords = (instant: string, timeZone: string): Sentence => {
  const { day, month, year, hour, minute } =
    Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone);
  const time = `${twoDigits(hour)}:${twoDigits(minute)}`;
  return say`${day} ${named(MONTHS.en[month - 1] ?? '')} ${year}, ${time}`;
};
