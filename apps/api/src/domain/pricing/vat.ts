import { inForce, type FromDay } from '../calendar/in-force';
import { ok, refuse, type Result } from '../refusals/result';
import { CENT_PLACES, Decimal, apportion, roundTo, sum } from '../units';
import type { PricingRefusal } from './refusals';
import { say } from '../words/say';

/** A rate hangs on the class of product, not on the seller, and on the day. Rates are settings. */
export interface VatRate extends FromDay {
  readonly productClass: string;
  /** 0–100. */
  readonly ratePercent: Decimal;
}

/** To the cent; `net` + `vat` = `gross` always, because one of them is the difference. */
export interface VatSplit {
  readonly net: Decimal;
  readonly vat: Decimal;
  readonly gross: Decimal;
}

export const vatRateOn = (
  rates: readonly VatRate[],
  productClass: string,
  day: string,
): Result<Decimal, PricingRefusal> => {
  const rate = inForce(
    rates.filter((candidate) => candidate.productClass === productClass),
    day,
  );
  return rate
    ? ok(rate.ratePercent)
    : refuse({
        code: 'vat-rate-missing',
        detail: say`No VAT rate for the product class “${productClass}” holds on ${day}. Set it under Workshop after looking it up with your tax office.`,
        facts: { productClass, day },
      });
};

const factor = (ratePercent: Decimal): Decimal => ratePercent.plus(100).dividedBy(100);

/** Takes a price that a customer pays apart. Net is rounded half up, VAT is the rest. */
export const splitGross = (gross: Decimal, ratePercent: Decimal): VatSplit => {
  const net = roundTo(gross.dividedBy(factor(ratePercent)), CENT_PLACES);
  return { net, vat: gross.minus(net), gross };
};

/** Builds a price up from net to the cent. VAT is rounded half up, gross is the sum. */
export const addVat = (net: Decimal, ratePercent: Decimal): VatSplit => {
  const rounded = roundTo(net, CENT_PLACES);
  const vat = roundTo(rounded.times(ratePercent).dividedBy(100), CENT_PLACES);
  return { net: rounded, vat, gross: rounded.plus(vat) };
};

/** Gross for a net price, neither of them rounded: for prices that an ending rule rounds next. */
export const grossOf = (net: Decimal, ratePercent: Decimal): Decimal =>
  net.times(factor(ratePercent));

export interface TaxedLine {
  readonly gross: Decimal;
  readonly ratePercent: Decimal;
}

export interface VatTotal extends VatSplit {
  readonly ratePercent: Decimal;
  /** VAT of each of its lines, in their order; they sum to `vat`. */
  readonly lineVat: readonly Decimal[];
}

/**
 * VAT of a list of lines by rate, rounded per line or once per rate: the law of the place decides
 * which, so it is a setting. Rounded once, the cents are shared back over the lines.
 */
export const vatTotals = (
  lines: readonly TaxedLine[],
  rounding: 'per_line' | 'per_invoice',
): VatTotal[] => {
  const rates = [...new Set(lines.map(({ ratePercent }) => ratePercent.toString()))];
  return rates.map((text) => {
    const ratePercent = new Decimal(text);
    const own = lines.filter((line) => line.ratePercent.equals(ratePercent));
    const gross = sum(own.map((line) => line.gross));
    const split = own.map((line) => splitGross(line.gross, ratePercent).vat);
    const vat = rounding === 'per_line' ? sum(split) : splitGross(gross, ratePercent).vat;
    const shared =
      rounding === 'per_line' || gross.isZero()
        ? split
        : apportion(
            vat,
            own.map((line) => line.gross),
            CENT_PLACES,
          );
    return { ratePercent, gross, vat, net: gross.minus(vat), lineVat: shared };
  });
};
