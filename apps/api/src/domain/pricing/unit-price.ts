import { CENT_PLACES, Decimal, roundTo } from '../units';

const GRAMS_PER_KG = 1000;

/**
 * When a market lets a shop leave the price per kg out. Directive 98/6/EC leaves much to the
 * states (Articles 5 and 6), so each of these is a setting of the workshop and not a rule here.
 */
export interface UnitPriceRule {
  /** Packs lighter than this many grams are exempt; absent: none is. */
  readonly exemptBelowG?: Decimal;
  readonly exemptMixedAssortments: boolean;
}

export type UnitPriceDuty = 'required' | 'same_as_price' | 'below_weight' | 'mixed_assortment';

export interface UnitPriceStatement {
  /** Price per kg to the cent, VAT included. */
  readonly pricePerKg: Decimal;
  /** `required`, or why it may be left out. */
  readonly duty: UnitPriceDuty;
}

/** Price per kg of a pack, rounded half up, and whether it must be shown. */
export const unitPriceOf = (
  gross: Decimal,
  massG: Decimal,
  mixedAssortment: boolean,
  rule: UnitPriceRule,
): UnitPriceStatement => {
  const pricePerKg = roundTo(gross.times(GRAMS_PER_KG).dividedBy(massG), CENT_PLACES);
  return { pricePerKg, duty: dutyOf(gross, massG, pricePerKg, mixedAssortment, rule) };
};

const dutyOf = (
  gross: Decimal,
  massG: Decimal,
  pricePerKg: Decimal,
  mixedAssortment: boolean,
  rule: UnitPriceRule,
): UnitPriceDuty => {
  if (pricePerKg.equals(gross)) return 'same_as_price';
  if (rule.exemptBelowG && massG.lessThan(rule.exemptBelowG)) return 'below_weight';
  if (mixedAssortment && rule.exemptMixedAssortments) return 'mixed_assortment';
  return 'required';
};
