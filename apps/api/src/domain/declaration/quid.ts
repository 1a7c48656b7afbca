import { Decimal, roundTo, sum } from '../units';

export interface QuantifiedIngredient {
  readonly id: string;
  /** Ingoing grams; finished grams for a volatile. */
  readonly weightG: Decimal;
}

export type Quid =
  | { readonly form: 'percent'; readonly figures: ReadonlyMap<string, Decimal> }
  /** Above 100 %, alone or together, the weight for 100 g of product replaces the percentage. */
  | { readonly form: 'grams_per_100_g'; readonly figures: ReadonlyMap<string, Decimal> };

/**
 * Guidance practice (from memory): whole per cent, half steps below five. A trace that is declared
 * at all keeps its first digit, so that it is never declared as nothing.
 */
const stepOf = (exact: Decimal): Decimal => {
  if (exact.greaterThanOrEqualTo(5)) return new Decimal(1);
  if (exact.greaterThanOrEqualTo('0.5')) return new Decimal('0.5');
  return new Decimal(10).pow(exact.isZero() ? -1 : exact.log(10).floor());
};

const inSteps = (exact: Decimal, down: boolean): Decimal => {
  const step = stepOf(exact);
  const mode = down ? Decimal.ROUND_FLOOR : Decimal.ROUND_HALF_UP;
  return exact.dividedBy(step).toDecimalPlaces(0, mode).times(step);
};

/**
 * Quantities of ingredients by Article 22 and Annex VIII: ingoing weight over the weight of the
 * finished food. Rounded figures never add up to more than 100 when the exact ones don't.
 */
export const quantify = (
  ingredients: readonly QuantifiedIngredient[],
  finishedG: Decimal,
): Quid => {
  const exact = ingredients.map(({ id, weightG }) => ({
    id,
    percent: weightG.times(100).dividedBy(finishedG),
  }));
  if (sum(exact.map((entry) => entry.percent)).greaterThan(100)) {
    const grams = exact.map(({ id, percent }) => [id, roundTo(percent, 0)] as const);
    return { form: 'grams_per_100_g', figures: new Map(grams) };
  }
  const figures = new Map(exact.map(({ id, percent }) => [id, inSteps(percent, false)]));
  const byExcess = [...exact].sort((a, b) => excess(figures, b).comparedTo(excess(figures, a)));
  for (const { id, percent } of byExcess) {
    if (sum(figures.values()).lessThanOrEqualTo(100)) break;
    figures.set(id, inSteps(percent, true));
  }
  return { form: 'percent', figures };
};

const excess = (
  figures: ReadonlyMap<string, Decimal>,
  { id, percent }: { id: string; percent: Decimal },
): Decimal => (figures.get(id) ?? percent).minus(percent);
