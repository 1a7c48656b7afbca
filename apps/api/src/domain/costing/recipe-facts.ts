import { ok, refuse, type Result } from '../refusals/result';
import { massYield, type ScalableRecipe, type ScalingRefusal, type StepLoss } from '../scaling';
import { isLostByPiece, weightLossesOf } from '../scaling/losses';
import { Decimal } from '../units';
import { isWaste } from './cost-entries';
import type { Labour } from './labour-and-overhead';
import { say } from '../words/say';

export interface RecipeLine {
  readonly component: string;
  readonly role: string;
  /** Really taken, step losses included: grams, or pieces of what is kept by the piece. */
  readonly quantity: Decimal;
  /** Part of it that is wasted before it is a good product. */
  readonly wasteRatio: Decimal;
}

/** A recipe version as costing reads it. */
export interface RecipeFacts {
  readonly item: string;
  /** Good output of the lines after all losses, not rounded: grams, pieces or boxes. */
  readonly goodYield: Decimal;
  readonly makesPieces: boolean;
  readonly lines: readonly RecipeLine[];
  readonly labour: readonly Labour[];
}

const ONE = new Decimal(1);

/** What is left of 1 after the losses, one step after the other. */
const keptRatio = (losses: readonly StepLoss[]): Decimal =>
  losses.reduce(
    (kept, { percent }) => kept.times(new Decimal(100).minus(percent)).dividedBy(100),
    ONE,
  );

/**
 * Reads a recipe as scaling does: by weight, the lines are what is taken and the yield is what they
 * leave; by the piece, a line is what sits in the product, so its losses by weight divide it, and
 * rejects and samples take whole pieces from the count.
 */
export const recipeFacts = (
  item: string,
  recipe: ScalableRecipe,
  labour: readonly Labour[],
  makesPieces: boolean,
): Result<RecipeFacts, ScalingRefusal> => {
  const all = recipe.losses.find(({ percent }) => percent.greaterThanOrEqualTo(100));
  if (all) return losesEverything(all.step);
  const byPiece = recipe.losses.filter(isLostByPiece);
  const lines = recipe.lines.map((line): RecipeLine => {
    const byWeight = line.unit === 'g' ? weightLossesOf(recipe.losses, line.role) : [];
    const wasted = [...byWeight.filter(({ kind }) => isWaste(kind)), ...byPiece];
    const quantity =
      recipe.yieldPieces === null ? line.quantity : line.quantity.dividedBy(keptRatio(byWeight));
    return {
      component: line.itemId,
      role: line.role,
      quantity,
      wasteRatio: ONE.minus(keptRatio(wasted)),
    };
  });
  if (recipe.yieldPieces !== null) {
    const goodYield = keptRatio(byPiece).times(recipe.yieldPieces);
    return ok({ item, goodYield, makesPieces, lines, labour });
  }
  const goodYield = massYield(recipe);
  return goodYield.ok
    ? ok({ item, goodYield: goodYield.value, makesPieces, lines, labour })
    : goodYield;
};

const losesEverything = (step: string): Result<never, ScalingRefusal> =>
  refuse({
    code: 'step-loses-everything',
    detail: say`Step “${step}” loses all that goes into it. Give 0 to under 100 %.`,
    facts: { step },
  });
