/**
 * Exact sums of decimal strings on screen (tare, weigh-in steps, remainders), without floats: a
 * value is a whole number of ten-thousandths, the finest step that the service keeps (money).
 */
const PLACES = 4;
const SCALE = 10n ** BigInt(PLACES);
const PATTERN = /^-?\d{1,12}(\.\d{1,4})?$/;

export const isExact = (text: string): boolean => PATTERN.test(text);

const toUnits = (text: string): bigint => {
  if (!isExact(text)) throw new RangeError(`not a decimal with at most ${PLACES} places: ${text}`);
  const negative = text.startsWith('-');
  const [whole = '0', fraction = ''] = text.replace('-', '').split('.');
  const units = BigInt(whole) * SCALE + BigInt(fraction.padEnd(PLACES, '0'));
  return negative ? -units : units;
};

const fromUnits = (units: bigint): string => {
  const size = units < 0n ? -units : units;
  const fraction = (size % SCALE).toString().padStart(PLACES, '0').replace(/0+$/, '');
  const whole = (size / SCALE).toString();
  return `${units < 0n ? '-' : ''}${whole}${fraction === '' ? '' : `.${fraction}`}`;
};

export const addExact = (...terms: readonly string[]): string =>
  fromUnits(terms.reduce((total, term) => total + toUnits(term), 0n));

export const subtractExact = (from: string, taken: string): string =>
  fromUnits(toUnits(from) - toUnits(taken));

/** Negative when a is less than b, zero when they are the same value, positive otherwise. */
export const compareExact = (a: string, b: string): number => {
  const difference = toUnits(a) - toUnits(b);
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
};

/** Kilograms as typed to grams as kept; moves the point only. */
export const kilogramsToGrams = (text: string): string => fromUnits(toUnits(text) * 1000n);
