import { effectivePresence } from '../allergens';
import type { MarketRules } from '../market';
import { sum, ZERO, type Decimal } from '../units';
import type { IngoingLot, IngoingMix } from './ingoing';

export interface SulphiteSum {
  /** Total SO2 in the finished food, mg in a kilogram, over the lots that state an amount. */
  readonly mgPerKg: Decimal;
  readonly declared: boolean;
  /** Lots that bring sulphites and must show it once they are declared. */
  readonly lotIds: ReadonlySet<string>;
}

/**
 * Adds up the sulphites of all ingredients in the food as ready to eat. A lot that contains them
 * without a figure makes them declared: an unknown amount is not a small one.
 */
export const sumSulphites = (mix: IngoingMix, market: MarketRules): SulphiteSum => {
  const withFigure = mix.lots.flatMap((lot) => {
    const mgPerKg = lot.specification?.statements.sulphiteMgPerKg;
    return mgPerKg?.greaterThan(0) ? [{ lot, mgPerKg }] : [];
  });
  const withoutFigure = mix.lots.filter((lot) => containsUnmeasured(lot, market));
  const grams = sum(withFigure.map(({ lot, mgPerKg }) => mgPerKg.times(lot.ingoingG)));
  const mgPerKg = mix.finishedG.greaterThan(0) ? grams.dividedBy(mix.finishedG) : ZERO;
  const { limitMgPerKg, limitItself } = market.sulphites;
  const over = limitItself
    ? mgPerKg.greaterThanOrEqualTo(limitMgPerKg)
    : mgPerKg.greaterThan(limitMgPerKg);
  return {
    mgPerKg,
    declared: over || withoutFigure.length > 0,
    lotIds: new Set([...withFigure.map(({ lot }) => lot), ...withoutFigure].map((l) => l.lotId)),
  };
};

const containsUnmeasured = (lot: IngoingLot, market: MarketRules): boolean => {
  const { specification } = lot;
  if (!specification || specification.statements.sulphiteMgPerKg) return false;
  const stated = specification.allergens.sulphites === 'contains';
  return stated || effectivePresence(specification, 'sulphites', market) === 'contains';
};
