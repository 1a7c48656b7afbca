import { ok, type Result } from '../refusals/result';
import { CENT_PLACES, Decimal, roundTo } from '../units';
import { marginPercent, markUpPercent, netPriceFor, type PriceTarget } from './margin';
import { priceWithEnding, type EndingRule } from './price-endings';
import type { PricingRefusal } from './refusals';
import { addVat, grossOf, splitGross, type VatSplit } from './vat';

export type PriceListKind = 'counter' | 'trade';

export interface QuoteRule {
  readonly list: PriceListKind;
  readonly target: PriceTarget;
  readonly vatPercent: Decimal;
  /** Absent: to the cent. Applied to what the list shows: gross at the counter, net in trade. */
  readonly endings?: EndingRule;
}

export interface Quote extends VatSplit {
  /** Net price that meets the target exactly, before any rounding. */
  readonly exactNet: Decimal;
  /** What is left once the price stands as it is shown: the figures to judge it by. */
  readonly realMarginPercent: Decimal | undefined;
  readonly realMarkUpPercent: Decimal | undefined;
}

/** From cost to the price that stands on the list, with the margin that is really left after it. */
export const quote = (cost: Decimal, rule: QuoteRule): Result<Quote, PricingRefusal> => {
  const exactNet = netPriceFor(cost, rule.target);
  if (!exactNet.ok) return exactNet;
  const shown = rule.list === 'counter' ? grossOf(exactNet.value, rule.vatPercent) : exactNet.value;
  const rounded = rule.endings
    ? priceWithEnding(shown, rule.endings)
    : ok(roundTo(shown, CENT_PLACES));
  if (!rounded.ok) return rounded;
  const split = splitShown(rounded.value, rule.list, rule.vatPercent);
  return ok({
    ...split,
    exactNet: exactNet.value,
    realMarginPercent: marginPercent(split.net, cost),
    realMarkUpPercent: markUpPercent(split.net, cost),
  });
};

/** A price as its list shows it, opened into net, VAT and gross. */
export const splitShown = (shown: Decimal, list: PriceListKind, vatPercent: Decimal): VatSplit =>
  list === 'counter' ? splitGross(shown, vatPercent) : addVat(shown, vatPercent);

export interface MarginWarning {
  readonly marginPercent: Decimal;
  readonly floorPercent: Decimal;
  /** Net price at which the floor would just be held. */
  readonly netPriceForFloor: Decimal;
}

/** Set when what is earned on a thing falls under the floor that the workshop chose for itself. */
export const marginWarning = (
  netPrice: Decimal,
  cost: Decimal,
  floorPercent: Decimal,
): Result<MarginWarning | undefined, PricingRefusal> => {
  const real = marginPercent(netPrice, cost) ?? new Decimal(0);
  const needed = netPriceFor(cost, { kind: 'margin', percent: floorPercent });
  if (!needed.ok) return needed;
  if (real.greaterThanOrEqualTo(floorPercent)) return ok(undefined);
  return ok({ marginPercent: real, floorPercent, netPriceForFloor: needed.value });
};
