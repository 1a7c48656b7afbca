import type { Decimal } from '../units';
import { say } from '../words/say';

/** The three weights of an infusion: before, after the boil, after straining. */
export interface InfusionWeights {
  readonly liquidG: Decimal;
  readonly boiledG: Decimal;
  readonly strainedG: Decimal;
  /** Dry tea, spice or pod. */
  readonly solidsG: Decimal;
}

export interface InfusionBalance {
  readonly steamG: Decimal;
  readonly heldBackG: Decimal;
  /** Grams of liquid kept per gram of dry solid: the workshop's own figure, to store with a date. */
  readonly retentionRatio: Decimal;
  /** Liquid to add to come back to the first weight; a lot of its own, drawn on its own. */
  readonly topUpG: Decimal;
  /** Of the first liquid, what was thrown away with the solids. */
  readonly discardedLiquidG: Decimal;
}

/** Weigh-back. `boiledG` and `strainedG` are of the liquid alone, without the solids. */
export const infusionFromWeights = (weights: InfusionWeights): InfusionBalance => {
  const heldBackG = weights.boiledG.minus(weights.strainedG);
  return {
    steamG: weights.liquidG.minus(weights.boiledG),
    heldBackG,
    retentionRatio: heldBackG.dividedBy(weights.solidsG),
    topUpG: weights.liquidG.minus(weights.strainedG),
    discardedLiquidG: heldBackG.times(weights.liquidG).dividedBy(weights.boiledG),
  };
};

/** What to expect before weighing, from steam and a measured retention ratio. */
export const infusionPlan = (
  liquidG: Decimal,
  steamG: Decimal,
  solidsG: Decimal,
  retentionRatio: Decimal,
): InfusionBalance => {
  const boiledG = liquidG.minus(steamG);
  const strainedG = boiledG.minus(solidsG.times(retentionRatio));
  return infusionFromWeights({ liquidG, boiledG, strainedG, solidsG });
};

/** Published and usual retention, g per g, to start from until the workshop's own is weighed. */
export const RETENTION_GUIDE = [
  {
    what: say`tea leaf, not pressed`,
    low: '4.0',
    high: '5.7',
    source: say`tea-spent dewatering note`,
  },
  {
    what: say`tea leaf, pressed hard`,
    low: '1.5',
    high: '1.6',
    source: say`tea-spent dewatering note`,
  },
  {
    what: say`tea leaf, pressed by hand`,
    low: '1.5',
    high: '4.0',
    source: say`common practice, no source`,
  },
  { what: say`coffee grounds`, low: '2.0', high: '2.0', source: say`common practice, no source` },
  {
    what: say`vanilla, zest, cinnamon`,
    low: '0.3',
    high: '1.5',
    source: say`common practice, no source`,
  },
] as const;
