import { ok, refuse, type Result } from '../refusals/result';
import { apportion, Decimal, MONEY_PLACES, QUANTITY_PLACES, sum, ZERO } from '../units';
import type { MakingRefusal } from './refusals';
import { say } from '../words/say';

/** What came out, as the bench counted and weighed it. */
export interface CountedOutput {
  readonly itemName: string;
  readonly unit: 'g' | 'pc';
  /** In `unit`. */
  readonly quantity: Decimal;
  /** Weight of the whole output when pieces were weighed; null: it follows from the balance. */
  readonly weighedG: Decimal | null;
  /** Nominal weight of a piece, when the item states one. */
  readonly nominalMassG: Decimal | null;
  /** Pieces that were rejected or sampled: they weigh like the good ones and carry no cost. */
  readonly lost: boolean;
}

export interface BatchWeights {
  readonly batchCode: string;
  /** Σ draws less reversals, grams of food. */
  readonly drawnG: Decimal;
  /** Σ losses, those booked along the way included. */
  readonly lostG: Decimal;
  /** Given when more came out than went in and a person says why. */
  readonly imbalanceReason: string | null;
}

export interface BatchSums extends BatchWeights {
  /** Σ cost of the draws less reversals, packaging included. */
  readonly drawnCost: Decimal;
}

export interface SettledOutput {
  readonly quantity: Decimal;
  readonly massG: Decimal;
  readonly cost: Decimal;
}

type Settled = Result<SettledOutput[], MakingRefusal>;

const grams = (value: Decimal): string => `${value.toFixed()} g`;

/** Weight that is known of itself: grams are their own weight, pieces only when weighed. */
const knownMass = (output: CountedOutput): Decimal | null =>
  output.unit === 'g' ? output.quantity : output.weighedG;

const refuseBalance = (sums: BatchWeights, madeG: Decimal): Result<never, MakingRefusal> => {
  const difference = sums.drawnG.minus(sums.lostG).minus(madeG);
  const facts = {
    drawnGrams: sums.drawnG.toFixed(),
    lostGrams: sums.lostG.toFixed(),
    madeGrams: madeG.toFixed(),
    differenceGrams: difference.toFixed(),
  };
  const account = say`Batch ${sums.batchCode}: ${grams(sums.drawnG)} went in, ${grams(madeG)} came out and ${grams(sums.lostG)} was lost`;
  if (difference.isPositive()) {
    return refuse({
      code: 'batch-does-not-balance',
      detail: say`${account}, so ${grams(difference)} is missing. Weigh again, or book where it went: steam, scrapings, held back, rejects or samples.`,
      facts,
    });
  }
  return refuse({
    code: 'more-out-than-in',
    detail: say`${account}: ${grams(difference.negated())} more out than in. Look for a draw that was forgotten; if the scale or a rounding is to blame, give that as the reason.`,
    facts,
  });
};

/** Shares what is left among outputs that were counted but not weighed. */
const spread = (
  outputs: readonly CountedOutput[],
  sums: BatchSums,
): Result<(Decimal | null)[], MakingRefusal> => {
  const known = outputs.map(knownMass);
  const open = outputs.filter((_, index) => known[index] === null);
  if (open.length === 0) return ok(known);
  const knownG = sum(known.map((mass) => mass ?? ZERO));
  const leftG = sums.drawnG.minus(sums.lostG).minus(knownG);
  if (!leftG.isPositive()) return refuseBalance(sums, knownG);
  const oneKind = open.every((output) => output.itemName === open[0]?.itemName);
  const weights = open.map(({ quantity, nominalMassG }) =>
    oneKind ? quantity : quantity.times(nominalMassG ?? ZERO),
  );
  const unknown = open.find((_, index) => weights[index]?.isZero() !== false);
  if (unknown !== undefined) {
    return refuse({
      code: 'output-not-weighed',
      detail: say`Several kinds of pieces came out and nothing says what ${unknown.itemName} weighs. Weigh each kind, or state the nominal weight of the item.`,
      facts: { item: unknown.itemName },
    });
  }
  const shares = apportion(leftG, weights, QUANTITY_PLACES);
  return ok(known.map((mass) => mass ?? shares.shift() ?? ZERO));
};

/** What was drawn is what was made and what was lost; more out than in needs a reason. */
export const checkBalance = (
  weights: BatchWeights,
  madeG: Decimal,
): Result<Decimal, MakingRefusal> => {
  const difference = weights.drawnG.minus(weights.lostG).minus(madeG);
  const excused = difference.isNegative() && weights.imbalanceReason !== null;
  return difference.isZero() || excused ? ok(difference) : refuseBalance(weights, madeG);
};

/** Cost goes by weight to what is good; by count when nothing in the batch weighs anything. */
const costWeights = (outputs: readonly CountedOutput[], massesG: readonly Decimal[]): Decimal[] => {
  const weigh = massesG.some((mass, index) => !mass.isZero() && outputs[index]?.lost === false);
  return outputs.map(({ quantity, lost }, index) =>
    lost ? ZERO : weigh ? (massesG[index] ?? ZERO) : quantity,
  );
};

/**
 * Settles a batch at its end: the weight of each output, to the milligram, so that what was drawn is
 * what was made and what was lost; and its cost, the draws' cost shared by weight, so that losses are
 * paid by the good ones and no ten-thousandth vanishes. More out than in needs a reason.
 */
export const settleBatch = (outputs: readonly CountedOutput[], sums: BatchSums): Settled => {
  if (outputs.every(({ lost }) => lost)) {
    return refuse({
      code: 'nothing-made',
      detail: say`Nothing good came out of batch ${sums.batchCode}. Abandon it, with the reason.`,
    });
  }
  const masses = spread(outputs, sums);
  if (!masses.ok) return masses;
  const massesG = masses.value.map((mass) => mass ?? ZERO);
  const madeG = sum(massesG);
  const balanced = checkBalance(sums, madeG);
  if (!balanced.ok) return balanced;
  const costs = apportion(sums.drawnCost, costWeights(outputs, massesG), MONEY_PLACES);
  return ok(
    outputs.map(({ quantity }, index) => ({
      quantity,
      massG: massesG[index] ?? ZERO,
      cost: costs[index] ?? ZERO,
    })),
  );
};
