import { percentOf, totalG, type Caution, type MakeUp } from '../composition';
import { Decimal, roundTo } from '../units';
import { ESTIMATE_CAUTION, serumCautions } from './cautions';
import { dissolved, norrish } from './norrish';
import { solutesOf, type Solute } from './solutes';
import { say } from '../words/say';

/** Lowest water activity for which the model is shown; below it the error isn't known. */
export const LOWEST_MODELLED = 0.7;
/** Less water than this (per cent of the mix) isn't a serum: nut pastes, chocolate. Our choice. */
const LEAST_WATER_PERCENT = 5;
/** Unstated weight up to this (per cent) is counted as water, the worst it can be. Our choice. */
const MOST_UNSTATED_PERCENT = 2;
/** Raoult holds for ethanol to about 15 % of water and ethanol; for salt to 2 mol per kg. */
const MOST_ALCOHOL_RATIO = 0.15;
const MOST_SALT_G_PER_G = 0.1169;
const SYRUP_DE_RANGE = [20, 100] as const;

export const SERUM_ERROR = new Decimal('0.02');
export const GANACHE_ERROR = new Decimal('0.03');

export interface WaterActivityEstimate {
  readonly status: 'estimated';
  /** Two decimals: more would promise what the model can't keep. */
  readonly value: Decimal;
  readonly error: Decimal;
  /** Unrounded, all sugar dissolved and sugar capped; the higher is reported. */
  readonly allDissolved: number;
  readonly capped: number;
  /** The wet end: the higher variant plus the error, four decimals, 1 at most. */
  readonly worst: Decimal;
  readonly cautions: readonly Caution[];
}

export interface OutsideModel {
  readonly status: 'outside';
  readonly reason: string;
  /** Highest water activity that the reason leaves possible; null when nothing is known. */
  readonly worst: Decimal | null;
  readonly cautions: readonly Caution[];
}

export type WaterActivity = WaterActivityEstimate | OutsideModel;

export interface BoundWater {
  /** Grams of water held per gram; 0 (the headline) reads high. */
  readonly perGramCocoa: number;
  readonly perGramProtein: number;
}

const NONE_BOUND: BoundWater = { perGramCocoa: 0, perGramProtein: 0 };

/**
 * Estimated water activity of a filling from its composition after losses. Several-solute Norrish
 * with dissolved-sugar caps; both variants are computed and the higher is reported. Gives a reason
 * in place of a number outside the range in which the model was checked.
 */
export const estimateWaterActivity = (
  makeUp: MakeUp,
  bound: BoundWater = NONE_BOUND,
): WaterActivity => {
  const waterG = freeWaterG(makeUp, bound);
  const solutes = solutesOf(makeUp);
  const outside = outsideReason(makeUp, waterG, solutes);
  if (outside) return outside;
  const allDissolved = norrish(waterG, solutes);
  const capped = norrish(waterG, dissolved(waterG, solutes));
  const higher = Math.max(allDissolved, capped);
  const error = hasCocoa(makeUp) ? GANACHE_ERROR : SERUM_ERROR;
  const worst = (aw: number): Decimal => Decimal.min(1, roundTo(new Decimal(aw).plus(error), 4));
  if (higher < LOWEST_MODELLED) {
    return outsideModel(
      say`The model gives less than 0.70, where it was never checked.`,
      worst(LOWEST_MODELLED),
    );
  }
  return {
    status: 'estimated',
    value: roundTo(new Decimal(higher), 2),
    error,
    allDissolved,
    capped,
    worst: worst(higher),
    cautions: [ESTIMATE_CAUTION(error), ...serumCautions(makeUp, waterG)],
  };
};

const hasCocoa = (makeUp: MakeUp): boolean =>
  makeUp.fatFreeCocoa.greaterThan(0) || makeUp.parts.cocoaButter.greaterThan(0);

const freeWaterG = ({ parts, fatFreeCocoa }: MakeUp, bound: BoundWater): number => {
  const held =
    bound.perGramCocoa * fatFreeCocoa.toNumber() + bound.perGramProtein * parts.protein.toNumber();
  return Math.max(0, parts.water.plus(parts.unstated).toNumber() - held);
};

const outsideReason = (
  makeUp: MakeUp,
  waterG: number,
  solutes: readonly Solute[],
): OutsideModel | null => {
  const gramsOf = (name: string): number => solutes.find((row) => row.name === name)?.massG ?? 0;
  if (!totalG(makeUp).greaterThan(0)) return outsideModel(say`There is nothing in the mix.`, null);
  if (percentOf(makeUp.parts.unstated, makeUp).greaterThan(MOST_UNSTATED_PERCENT)) {
    return outsideModel(say`The composition of an ingredient isn’t stated.`, null);
  }
  if ((100 * waterG) / totalG(makeUp).toNumber() < LEAST_WATER_PERCENT) {
    return outsideModel(
      say`There is too little water for a solution (under 5 %): measure it.`,
      null,
    );
  }
  const alcoholG = gramsOf('alcohol');
  if (alcoholG / (alcoholG + waterG) > MOST_ALCOHOL_RATIO) {
    return outsideModel(say`There is more than 15 % alcohol in the water.`, null);
  }
  if (gramsOf('salt') / waterG > MOST_SALT_G_PER_G) {
    return outsideModel(say`There is more than 2 mol of salt per kg of water.`, null);
  }
  const [lowest, highest] = SYRUP_DE_RANGE;
  const odd = [...makeUp.syrups.keys()].find((de) => Number(de) < lowest || Number(de) > highest);
  if (odd !== undefined) {
    return outsideModel(say`A glucose syrup of DE ${odd} is outside DE 20–100.`, null);
  }
  return null;
};

const outsideModel = (reason: string, worst: Decimal | null): OutsideModel => ({
  status: 'outside',
  reason,
  worst,
  cautions: [
    {
      code: 'outside-the-model',
      level: 'warning',
      text: say`Outside the model’s range: ${reason} No number is shown. Measure water activity with a calibrated meter.`,
    },
  ],
});
