import type { Decimal } from '../units';
import { say, type Sentence } from '../words/say';

export interface DutyFacts {
  readonly largestSurfaceCm2: Decimal;
  /** A nutrition or health claim takes every exemption away. */
  readonly makesClaim: boolean;
  /** The maker supplies small quantities to the consumer or to local shops (Annex V, point 19). */
  readonly smallLocalMaker: boolean;
  /** 21 CFR 101.9(j)(1) or (j)(18), with the notice where one is due. */
  readonly usSmallBusiness: boolean;
}

export interface NutritionDuty {
  readonly required: boolean;
  /** Why, in words for the screen. */
  readonly reason: Sentence;
}

const SMALL_PACK_CM2 = 25;

/** Whether a nutrition declaration is due in Europe, with the reason (Regulation (EU) No 1169/2011). */
export const europeanDuty = (facts: DutyFacts): NutritionDuty => {
  if (facts.makesClaim) {
    return { required: true, reason: say`A nutrition or health claim makes the declaration due.` };
  }
  if (facts.largestSurfaceCm2.lessThan(SMALL_PACK_CM2)) {
    return { required: false, reason: say`Largest surface under 25 cm² (Annex V, point 18).` };
  }
  if (facts.smallLocalMaker) {
    return {
      required: false,
      reason: say`Supplied directly by the maker in small quantities (Annex V, point 19), as set.`,
    };
  }
  return { required: true, reason: say`No exemption applies (Article 9(1)(l)).` };
};

/** The same for the United States (21 CFR 101.9). */
export const americanDuty = (facts: DutyFacts): NutritionDuty => {
  if (facts.makesClaim) {
    return { required: true, reason: say`A nutrient or health claim cancels the exemption.` };
  }
  return facts.usSmallBusiness
    ? { required: false, reason: say`Small business, 21 CFR 101.9(j), as set.` }
    : { required: true, reason: say`No exemption applies (21 CFR 101.9).` };
};

export interface UsBusiness {
  readonly totalSalesUsd: number;
  readonly foodSalesUsd: number;
  readonly fullTimeEquivalents: number;
  readonly unitsOfProductAYear: number;
}

/** Which small-business exemption holds and whether FDA must be told each year; null for none. */
export const usExemption = (
  business: UsBusiness,
): { readonly rule: '101.9(j)(1)' | '101.9(j)(18)'; readonly yearlyNotice: boolean } | null => {
  if (business.totalSalesUsd <= 500_000 || business.foodSalesUsd <= 50_000) {
    return { rule: '101.9(j)(1)', yearlyNotice: false };
  }
  const { fullTimeEquivalents, unitsOfProductAYear } = business;
  if (fullTimeEquivalents < 10 && unitsOfProductAYear < 10_000) {
    return { rule: '101.9(j)(18)', yearlyNotice: false };
  }
  const small = fullTimeEquivalents < 100 && unitsOfProductAYear < 100_000;
  return small ? { rule: '101.9(j)(18)', yearlyNotice: true } : null;
};
