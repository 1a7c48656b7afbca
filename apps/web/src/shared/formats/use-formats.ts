import { createContext, useContext, useMemo } from 'react';
import { useTranslation } from 'react-i18next';
import { i18n, localeOf } from '../language/i18n';
import {
  dayBegins,
  dayEnds,
  formatDay,
  formatDayOfWeek,
  formatInstant,
  formatWeekday,
  todayIn,
} from './days';
import { formatDecimal, formatMass, formatMoney, formatPercent, parseDecimal } from './numbers';

/** What of the workshop's settings decides how things are written. */
export interface Written {
  readonly currency: string;
  readonly timeZone: string;
}

export const WrittenContext = createContext<Written>({ currency: 'EUR', timeZone: 'UTC' });

export const useFormats = () => {
  const { i18n: language } = useTranslation(undefined, { i18n });
  const { currency, timeZone } = useContext(WrittenContext);
  return useMemo(() => {
    const locale = localeOf(language.language, navigator.languages);
    return {
      locale,
      currency,
      mass: (grams: string) => formatMass(locale, grams),
      number: (text: string, most = 3, least = 0) => formatDecimal(locale, text, most, least),
      percent: (text: string, most = 1) => formatPercent(locale, text, most),
      money: (amount: string, most = 2) => formatMoney(locale, currency, amount, most),
      /** What one piece costs may be a few cents: below one, its fractions count. */
      cost: (amount: string) => formatMoney(locale, currency, amount, Number(amount) < 1 ? 4 : 2),
      quantity: (text: string, unit: string) =>
        unit === 'g'
          ? formatMass(locale, text)
          : `${formatDecimal(locale, text, 0)} ${language.language.startsWith('fr') ? 'pce' : unit}`,
      day: (day: string) => formatDay(locale, day.slice(0, 10)),
      dayOfWeek: (day: number) => formatDayOfWeek(locale, day),
      weekday: (day: string) => formatWeekday(locale, day),
      instant: (instant: string) => formatInstant(locale, timeZone, instant),
      /** A thing's name before what it is: French sets the colon off. */
      label: (name: string) => (language.language.startsWith('fr') ? `${name}\u00a0:` : `${name}:`),
      parse: (text: string) => parseDecimal(text, locale),
      today: () => todayIn(timeZone),
      dayBegins: (day: string) => dayBegins(timeZone, day),
      dayEnds: (day: string) => dayEnds(timeZone, day),
    };
  }, [language.language, currency, timeZone]);
};

export type Formats = ReturnType<typeof useFormats>;
