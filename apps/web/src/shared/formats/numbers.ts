import { isExact } from './exact';

type NumericText = `${number}`;

/**
 * Formats of one locale. Values come as decimal strings and go to Intl as strings, so no amount
 * passes through a float on its way to the screen.
 */
const formatter = (locale: string, options: Intl.NumberFormatOptions): Intl.NumberFormat =>
  new Intl.NumberFormat(locale, options);

export const formatDecimal = (locale: string, text: string, most = 3, least = 0): string =>
  isExact(text) || /^-?\d+(\.\d+)?$/.test(text)
    ? formatter(locale, { maximumFractionDigits: most, minimumFractionDigits: least })
        .format(text as NumericText)
        .replace('-', '−')
    : text;

/** Grams below a kilogram stay grams; above, kilograms with the grams kept. */
export const formatMass = (locale: string, grams: string): string => {
  const [size = '0', fraction = ''] = grams.replace('-', '').split('.');
  if (size.length <= 3) {
    return `${formatDecimal(locale, grams, 1)} g`;
  }
  const padded = size.padStart(4, '0');
  const sign = grams.startsWith('-') ? '-' : '';
  const kilograms = `${sign}${padded.slice(0, -3)}.${padded.slice(-3)}${fraction}`;
  return `${formatDecimal(locale, kilograms, 3)} kg`;
};

export const formatMoney = (locale: string, currency: string, amount: string, most = 2): string =>
  formatter(locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: 2,
    maximumFractionDigits: most,
  }).format(amount as NumericText);

export const formatPercent = (locale: string, percent: string, most = 1): string =>
  `${formatDecimal(locale, percent, most)} %`;

/**
 * What a person typed, as a decimal string, or undefined when it is not a number. Both comma and
 * point are taken as the decimal sign; groups may be set apart by spaces or apostrophes. A text with
 * both signs is read by its last one, and "1,250" in a locale with decimal points is refused rather
 * than guessed.
 */
export const parseDecimal = (text: string, locale: string): string | undefined => {
  const plain = text.replace(/[\s\u00a0\u202f'’]/g, '').replace('−', '-');
  const lastComma = plain.lastIndexOf(',');
  const lastPoint = plain.lastIndexOf('.');
  const decimalSign = formatter(locale, {}).format(1.5).includes(',') ? ',' : '.';
  if (lastComma >= 0 && lastPoint < 0 && decimalSign === '.' && /,\d{3}$/.test(plain)) {
    return undefined;
  }
  const signAt = Math.max(lastComma, lastPoint);
  const whole = (signAt < 0 ? plain : plain.slice(0, signAt)).replace(/[.,]/g, '');
  const fraction = signAt < 0 ? '' : plain.slice(signAt + 1);
  const canonical = fraction === '' ? whole : `${whole === '' ? '0' : whole}.${fraction}`;
  return isExact(canonical) ? canonical.replace(/^(-?)0+(?=\d)/, '$1') : undefined;
};
