import type { MarketRules } from '../market';
import { Decimal, sum, ZERO } from '../units';
import type { WeightedNode } from './weighted';

/** A place in the list: what stands there and the weight that decides where. */
export interface ListPlace {
  readonly entry: WeightedNode;
  /** Ingoing grams; finished grams for added water and volatiles (Annex VII Part A, point 1). */
  readonly rankG: Decimal;
  /** Under the limit that frees the order: these stand after the others. */
  readonly inTail: boolean;
}

/**
 * Puts a list in the order of Article 18 and Annex VII Part A: descending ingoing weight; added
 * water as finished weight less all else that was used, left out up to the market's limit;
 * volatiles by their weight in the finished food. The tail keeps the descending order, which is
 * one of the orders that it is free to have.
 */
export const inListOrder = (
  entries: readonly WeightedNode[],
  finishedG: Decimal,
  market: MarketRules,
): ListPlace[] => {
  const solids = entries.filter((entry) => !entry.node.flags.addedWater);
  const waters = entries.filter((entry) => entry.node.flags.addedWater);
  const places = [
    ...solids.map((entry) => ({ entry, rankG: rankOf(entry) })),
    ...placeWater(waters, finishedG.minus(sum(solids.map(rankOf))), finishedG, market),
  ];
  const tailUnder = finishedG.times(market.tail.underPercent).dividedBy(100);
  return places
    .map((place) => ({ ...place, inTail: belongsToTail(place.rankG, tailUnder, market) }))
    .sort((a, b) => Number(a.inTail) - Number(b.inTail) || b.rankG.comparedTo(a.rankG));
};

/** "2 percent or less" where the tail has a lead; "less than 2 %" where it hasn't. */
const belongsToTail = (rankG: Decimal, limitG: Decimal, market: MarketRules): boolean =>
  market.tail.lead ? rankG.lessThanOrEqualTo(limitG) : rankG.lessThan(limitG);

export const rankOf = (entry: WeightedNode): Decimal =>
  (entry.node.flags.volatile ? entry.massG : entry.ingoingG) ?? ZERO;

const carriesAllergen = (entry: WeightedNode): boolean =>
  entry.origins.length > 0 || entry.parts.some(carriesAllergen);

const placeWater = (
  waters: readonly WeightedNode[],
  leftG: Decimal,
  finishedG: Decimal,
  market: MarketRules,
): { entry: WeightedNode; rankG: Decimal }[] => {
  const limit = finishedG.times(market.waterOmittedUpToPercent).dividedBy(100);
  // "Water" that carries an allergen is never left out, however little of it is left.
  if (leftG.lessThanOrEqualTo(limit)) {
    return waters.filter(carriesAllergen).map((entry) => ({ entry, rankG: ZERO }));
  }
  const poured = sum(waters.map((entry) => entry.ingoingG ?? ZERO));
  return waters.map((entry) => ({
    entry,
    rankG: poured.isZero() ? ZERO : leftG.times(entry.ingoingG ?? ZERO).dividedBy(poured),
  }));
};
