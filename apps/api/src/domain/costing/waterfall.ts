import { CENT_PLACES, Decimal, ZERO, apportion, roundTo, sum } from '../units';
import { COST_CATEGORIES, totalCost, type CostCategory, type CostEntry } from './cost-entries';

/** One step of the picture that climbs from nothing to the whole cost. */
export interface WaterfallStep {
  readonly category: CostCategory;
  readonly part: string;
  /** Money to the cent. */
  readonly amount: Decimal;
  readonly from: Decimal;
  readonly to: Decimal;
}

export interface Waterfall {
  readonly steps: readonly WaterfallStep[];
  readonly total: Decimal;
}

/** Parts rounded to `places` that sum to the rounded whole (largest remainder). */
export const roundedParts = (amounts: readonly Decimal[], places = CENT_PLACES): Decimal[] => {
  const total = sum(amounts);
  return total.isZero()
    ? amounts.map(() => ZERO)
    : apportion(roundTo(total, places), amounts, places);
};

/**
 * Cost by category and part, in the order in which a person builds the product up, rounded so that
 * the steps meet and the last one ends at the rounded whole. Costs are never negative.
 */
export const waterfall = (entries: readonly CostEntry[], places = CENT_PLACES): Waterfall => {
  const sums = new Map<string, { category: CostCategory; part: string; amount: Decimal }>();
  for (const category of COST_CATEGORIES) {
    for (const { part, amount, category: own } of entries) {
      if (own !== category) continue;
      const key = `${category}/${part}`;
      sums.set(key, { category, part, amount: amount.plus(sums.get(key)?.amount ?? 0) });
    }
  }
  const rows = [...sums.values()];
  const amounts = roundedParts(
    rows.map(({ amount }) => amount),
    places,
  );
  let from = ZERO;
  const steps = rows.map(({ category, part }, index): WaterfallStep => {
    const amount = amounts[index] ?? ZERO;
    const step = { category, part, amount, from, to: from.plus(amount) };
    from = step.to;
    return step;
  });
  return { steps, total: roundTo(totalCost(entries), places) };
};

export interface ComparedPart {
  readonly category: CostCategory;
  readonly part: string;
  readonly designed: Decimal;
  readonly made: Decimal;
  /** Made less designed: positive when it cost more than it should. */
  readonly difference: Decimal;
}

/** As designed and as made, part by part; a part that one side lacks is zero there. */
export const compareCosts = (
  designed: readonly CostEntry[],
  made: readonly CostEntry[],
): ComparedPart[] => {
  const all = waterfall([...designed, ...made]).steps;
  const of = (entries: readonly CostEntry[], step: WaterfallStep): Decimal =>
    totalCost(entries.filter((e) => e.category === step.category && e.part === step.part));
  return all.map((step) => {
    const [plan, real] = [of(designed, step), of(made, step)];
    const { category, part } = step;
    return { category, part, designed: plan, made: real, difference: real.minus(plan) };
  });
};
