import { Temporal } from 'temporal-polyfill';
import { colonIn } from '../../domain/words';
import { MONTHS } from '../../domain/words/months';
import type { PaperLanguage, Translated } from './language';

/** Between thousands: a comma in English, a narrow no-break space in French. */
const GROUP: Translated<string> = { en: ',', fr: '\u202F' };
const POINT: Translated<string> = { en: '.', fr: ',' };

/** `2027-02-28` as `28 Feb 2027`: the month in letters, so that no one reads it the other way round. */
export const dayText = (isoDay: string, language: PaperLanguage): string => {
  const { day, month, year } = Temporal.PlainDate.from(isoDay);
  return `${day} ${MONTHS[language][month - 1] ?? ''} ${year}`;
};

const twoDigits = (value: number): string => String(value).padStart(2, '0');

export const timeText = (instant: Date, timeZone: string): string => {
  const { hour, minute } = zoned(instant, timeZone);
  return `${twoDigits(hour)}:${twoDigits(minute)}`;
};

const zoned = (instant: Date, timeZone: string): Temporal.ZonedDateTime =>
  Temporal.Instant.fromEpochMilliseconds(instant.getTime()).toZonedDateTimeISO(timeZone);

export const instantText = (instant: Date, timeZone: string, language: PaperLanguage): string =>
  `${dayText(zoned(instant, timeZone).toPlainDate().toString(), language)}, ${timeText(instant, timeZone)}`;

/** A decimal string as people read it: thousands apart, no noughts at the end. */
export const numberText = (decimal: string, language: PaperLanguage): string => {
  const [whole = '0', fraction = ''] = decimal.replace(/^-/, '').split('.');
  const grouped = whole.replaceAll(/\B(?=(?:[0-9]{3})+$)/g, GROUP[language]);
  const kept = fraction.replace(/0+$/, '');
  const sign = decimal.startsWith('-') && /[1-9]/.test(decimal) ? '\u2212' : '';
  return sign + grouped + (kept === '' ? '' : POINT[language] + kept);
};

/** Money keeps its noughts: `12.50`. */
export const moneyText = (decimal: string, currency: string, language: PaperLanguage): string => {
  const [whole = '0', fraction = ''] = decimal.split('.');
  const cents = fraction.replace(/0+$/, '').padEnd(2, '0');
  return `${numberText(whole, language)}${POINT[language]}${cents} ${currency}`;
};

/** A thing's name before what it is: French sets the colon off. */
export const labelled = (name: string, what: string, language: PaperLanguage): string =>
  `${name}${colonIn(language)} ${what}`;

/** A quantity in the unit of its lot. */
export const quantityText = (decimal: string, unit: 'g' | 'pc', language: PaperLanguage): string =>
  `${numberText(decimal, language)}\u00A0${unit === 'g' ? 'g' : PIECES[language]}`;

const PIECES: Translated<string> = { en: 'pcs', fr: 'pcs' };
