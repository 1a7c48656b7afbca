import { Decimal } from '../units';
import { NBSP } from '../words';

/** One avoirdupois ounce is exactly this many grams. */
const GRAMS_PER_OUNCE = new Decimal('28.349523125');
const OUNCES_PER_POUND = 16;

/** One decimal, downwards: a label never promises more than is inside. */
const down = (value: Decimal): string => value.toDecimalPlaces(1, Decimal.ROUND_DOWN).toString();

/** A figure never parts from its unit at the end of a line. */
const unbroken = (text: string): string => text.replace(/(\d) (oz|lb|kg|g)/g, `$1${NBSP}$2`);

/**
 * "Net Wt 3.5 oz (100 g)": both systems (21 CFR 101.7, from memory). From one pound to four, ounces
 * come first and then pounds; from four pounds on, pounds.
 */
export const netWeightUs = (netG: Decimal): string => {
  const ounces = netG.dividedBy(GRAMS_PER_OUNCE);
  const pounds = ounces.dividedBy(OUNCES_PER_POUND);
  const metric = netG.greaterThanOrEqualTo(1000)
    ? `${netG.dividedBy(1000).toString()} kg`
    : `${netG.toString()} g`;
  if (pounds.lessThan(1)) return unbroken(`Net Wt ${down(ounces)} oz (${metric})`);
  if (pounds.lessThan(4)) {
    return unbroken(`Net Wt ${down(ounces)} oz (${down(pounds)} lb) (${metric})`);
  }
  return unbroken(`Net Wt ${down(pounds)} lb (${metric})`);
};
