import { ok, refuse, type Result } from '../refusals/result';
import { Decimal, sum } from '../units';
import type { MouldingRefusal } from './refusals';
import { say } from '../words/say';

export interface Sample {
  readonly count: number;
  readonly meanG: Decimal;
  /** Standard deviation of the sample (n − 1). */
  readonly standardDeviationG: Decimal;
  readonly lowestG: Decimal;
  readonly highestG: Decimal;
}

/** Mean and spread of single weighings, usually ten. Refuses fewer than two and weights ≤ 0. */
export const weighingStatistics = (
  massesG: readonly Decimal[],
): Result<Sample, MouldingRefusal> => {
  if (massesG.length < 2 || massesG.some((mass) => !mass.greaterThan(0))) {
    return refuse({
      code: 'weighings-unusable',
      detail: say`Give at least two weighings, each above zero grams. Ten make a good mean.`,
    });
  }
  const meanG = sum(massesG).dividedBy(massesG.length);
  const squares = sum(massesG.map((mass) => mass.minus(meanG).pow(2)));
  return ok({
    count: massesG.length,
    meanG,
    standardDeviationG: squares.dividedBy(massesG.length - 1).sqrt(),
    lowestG: Decimal.min(...massesG),
    highestG: Decimal.max(...massesG),
  });
};

/** The same trays weighed three times: empty shells, filled, capped. */
export interface PieceWeighings {
  readonly shellsG: readonly Decimal[];
  readonly filledG: readonly Decimal[];
  readonly cappedG: readonly Decimal[];
}

export interface WeighedParts {
  readonly shells: Sample;
  readonly filled: Sample;
  readonly capped: Sample;
  /** Differences of the means. */
  readonly fillingG: Decimal;
  readonly capG: Decimal;
}

/**
 * Parts of a piece from weighings; better than geometry. The parts are differences of means, so the
 * weighings need not be of the same ten pieces. Refuses means that don't rise from step to step.
 */
export const weighedParts = (weighings: PieceWeighings): Result<WeighedParts, MouldingRefusal> => {
  const shells = weighingStatistics(weighings.shellsG);
  if (!shells.ok) return shells;
  const filled = weighingStatistics(weighings.filledG);
  if (!filled.ok) return filled;
  const capped = weighingStatistics(weighings.cappedG);
  if (!capped.ok) return capped;
  const fillingG = filled.value.meanG.minus(shells.value.meanG);
  const capG = capped.value.meanG.minus(filled.value.meanG);
  if (fillingG.isNegative() || capG.isNegative()) {
    return refuse({
      code: 'weighings-unusable',
      detail: say`Filled pieces weigh less than empty ones, or capped less than filled. Weigh again.`,
    });
  }
  return ok({
    shells: shells.value,
    filled: filled.value,
    capped: capped.value,
    fillingG,
    capG,
  });
};
