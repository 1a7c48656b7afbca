import { ok, refuse, type Result } from '../refusals/result';
import type { IdentificationRefusal } from './refusals';
import { say } from '../words/say';

/** Lengths of the GTIN family, check digit included. */
const GTIN_LENGTHS: ReadonlySet<number> = new Set([8, 12, 13, 14]);
const SSCC_LENGTH = 18;
const GLN_LENGTH = 13;

const isDigits = (text: string): boolean => /^[0-9]+$/.test(text);

/**
 * The GS1 standard check digit: from the right, weights 3, 1, 3, 1 …; what is missing to the next
 * ten. The same for GTIN-8/12/13/14, SSCC and GLN, because only the distance from the right counts.
 * @throws RangeError when `body` isn't digits; the caller checks what a person typed.
 */
export const checkDigit = (body: string): string => {
  if (!isDigits(body)) throw new RangeError('A check digit is computed over digits only.');
  let total = 0;
  for (let place = 0; place < body.length; place += 1) {
    const weight = (body.length - place) % 2 === 1 ? 3 : 1;
    total += Number(body.charAt(place)) * weight;
  }
  return String((10 - (total % 10)) % 10);
};

export const withCheckDigit = (body: string): string => body + checkDigit(body);

const endsInItsCheckDigit = (text: string): boolean =>
  isDigits(text) && checkDigit(text.slice(0, -1)) === text.slice(-1);

export const isGtin = (text: string): boolean =>
  GTIN_LENGTHS.has(text.length) && endsInItsCheckDigit(text);

export const isSscc = (text: string): boolean =>
  text.length === SSCC_LENGTH && endsInItsCheckDigit(text);

export const isGln = (text: string): boolean =>
  text.length === GLN_LENGTH && endsInItsCheckDigit(text);

/** GTINs are kept as 14 digits; padding with zeros never changes the check digit. */
export const toGtin14 = (text: string): Result<string, IdentificationRefusal> => {
  if (isGtin(text)) return ok(text.padStart(14, '0'));
  const why = !isDigits(text)
    ? say`A GTIN is digits only.`
    : !GTIN_LENGTHS.has(text.length)
      ? say`A GTIN has 8, 12, 13 or 14 digits; this has ${text.length}.`
      : say`Its check digit should be ${checkDigit(text.slice(0, -1))}; a digit was misread or mistyped.`;
  return refuse({
    code: 'gtin-not-valid',
    detail: say`${text.slice(0, 40)} isn't a GTIN. ${why}`,
    facts: { text: text.slice(0, 40) },
  });
};

/** The EAN-13 of a till, when the 14 digits can be printed as one (indicator digit 0). */
export const toEan13 = (gtin14: string): string | undefined =>
  isGtin(gtin14) && gtin14.length === 14 && gtin14.startsWith('0') ? gtin14.slice(1) : undefined;
