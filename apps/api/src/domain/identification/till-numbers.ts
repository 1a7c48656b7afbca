import { ok, refuse, type Result } from '../refusals/result';
import { checkDigit } from './check-digits';
import type { IdentificationRefusal } from './refusals';
import { named, say, type Sentence } from '../words/say';

/**
 * Restricted circulation numbers: 13 digits for the shop's own tills that carry an item and a price
 * or weight. They never leave the shop and never stand in a GTIN element (GS1 General
 * Specifications, 2.1.11). Each national GS1 organisation, or the shop, sets the layout, so it is a
 * template: digits as they are, I item, V value, C verifier of the value, K check digit.
 */
export const DEFAULT_TILL_TEMPLATE = '20IIIIICVVVVK';

export interface TillNumber {
  readonly item: string;
  /** Digits as printed; whether they mean cents or grams is the template's owner's choice. */
  readonly value: string;
}

/** Prefixes 02 and 20–29 have national meaning; 04 is for inside one company. */
export const isRestrictedNumber = (ean13: string): boolean => /^(?:02|04|2[0-9])/.test(ean13);

/** Whether a GTIN-14 means the same thing everywhere, and so may stand in GS1 data. */
export const isWorldwideGtin = (gtin14: string): boolean =>
  !(gtin14.startsWith('0') && isRestrictedNumber(gtin14.slice(1)));

const unitsLessTens = (product: number): number => (product % 10) - Math.floor(product / 10);

/**
 * Verifier of a four-digit price: weights 2−, 2−, 3, 5− (n− is the product's units less its tens; 3
 * its units only), the sum times three, its last digit. From memory of the GS1 General
 * Specifications, 7.9.3.
 */
export const priceVerifier = (price: string): string => {
  if (!/^[0-9]{4}$/.test(price)) throw new RangeError('The verifier is of four digits.');
  const [first = 0, second = 0, third = 0, fourth = 0] = [...price].map(Number);
  const total =
    unitsLessTens(first * 2) +
    unitsLessTens(second * 2) +
    ((third * 3) % 10) +
    unitsLessTens(fourth * 5);
  return String((((total * 3) % 10) + 10) % 10);
};

const refuseTill = (detail: Sentence): Result<never, IdentificationRefusal> =>
  refuse({ code: 'till-number-not-valid', detail });

const width = (template: string, mark: string): number => template.split(mark).length - 1;

export const checkTillTemplate = (template: string): Result<string, IdentificationRefusal> => {
  const shape = /^[0-9]{2}I+C?V+K$/;
  if (template.length !== 13 || !shape.test(template) || !isRestrictedNumber(template)) {
    return refuseTill(
      say`A till number is 13 places: 02, 04 or 20 to 29, then item (I), verifier (C), value (V), check (K).`,
    );
  }
  if (template.includes('C') && width(template, 'V') !== 4) {
    return refuseTill(say`A verifier (C) stands before a value of four digits.`);
  }
  return ok(template);
};

const part = (template: string, digits: string, mark: string): string =>
  [...digits].filter((_, place) => template[place] === mark).join('');

export const writeTillNumber = (
  template: string,
  { item, value }: TillNumber,
): Result<string, IdentificationRefusal> => {
  const checked = checkTillTemplate(template);
  if (!checked.ok) return checked;
  for (const [name, digits, mark] of [
    ['item', item, 'I'],
    ['value', value, 'V'],
  ] as const) {
    if (!/^[0-9]+$/.test(digits) || digits.length > width(template, mark)) {
      return refuseTill(say`The ${named(name)} ${digits.slice(0, 20)} has no room in ${template}.`);
    }
  }
  const paddedValue = value.padStart(width(template, 'V'), '0');
  const body = template
    .replace(/I+/, item.padStart(width(template, 'I'), '0'))
    .replace(/V+/, paddedValue)
    .replace('K', '');
  const verified = body.includes('C') ? body.replace('C', priceVerifier(paddedValue)) : body;
  return ok(verified + checkDigit(verified));
};

export const readTillNumber = (
  template: string,
  ean13: string,
): Result<TillNumber, IdentificationRefusal> => {
  const checked = checkTillTemplate(template);
  if (!checked.ok) return checked;
  const digitsMatch = ean13.length === 13 && ean13.startsWith(template.slice(0, 2));
  if (
    !digitsMatch ||
    !/^[0-9]+$/.test(ean13) ||
    checkDigit(ean13.slice(0, -1)) !== ean13.slice(-1)
  ) {
    return refuseTill(say`${ean13.slice(0, 20)} isn't a number of this shop's tills.`);
  }
  const value = part(template, ean13, 'V');
  const verifier = part(template, ean13, 'C');
  if (verifier !== '' && verifier !== priceVerifier(value)) {
    return refuseTill(say`The verifier of ${value} in ${ean13} is wrong.`);
  }
  return ok({ item: part(template, ean13, 'I'), value });
};
