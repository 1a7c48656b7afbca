import { ok, refuse, type Result } from '../refusals/result';
import { Decimal, QUANTITY_PLACES, roundTo } from '../units';
import { flowOf, type WeighedLine } from './flow';
import {
  carryThrough,
  isLostByPiece,
  weightLossesOf,
  yieldRatio,
  type CarriedStep,
  type StepLoss,
} from './losses';
import type { ScalingRefusal } from './refusals';
import { piecesToMake, unfit, type ScalingTarget } from './target';
import { say } from '../words/say';

export interface ScalableLine {
  readonly itemId: string;
  readonly unit: 'g' | 'pc';
  /** Grams or pieces that the recipe as written takes. */
  readonly quantity: Decimal;
  readonly role: string;
}

/**
 * A recipe as written. Kept by weight: the lines give `yieldMassG` after all losses (when it is null
 * it follows from the lines and the losses). Kept by the piece: the lines give `yieldPieces` pieces
 * as cast or packed; losses by piece divide the count, losses by weight divide the lines they touch.
 */
export interface ScalableRecipe {
  readonly lines: readonly ScalableLine[];
  readonly losses: readonly StepLoss[];
  readonly yieldMassG: Decimal | null;
  readonly yieldPieces: number | null;
  /** Cavities of one tray; null when the item isn't cast in trays. */
  readonly cavitiesPerTray: number | null;
}

export interface ScaledLine extends ScalableLine {
  /** Before rounding: exactly proportional to the target. */
  readonly exactQuantity: Decimal;
  /** Of a recipe kept by the piece: what each step that the line passes through should leave. */
  readonly steps: readonly CarriedStep[];
}

export interface ScaledRecipe {
  readonly factor: Decimal;
  /** Quantities rounded to the milligram, or up to whole pieces. */
  readonly lines: readonly ScaledLine[];
  readonly expectedMassG: Decimal | null;
  /** Good pieces to expect, rounded down. */
  readonly expectedPieces: Decimal | null;
  /** Pieces to cast or pack, before rejects. */
  readonly piecesToMake: Decimal | null;
  readonly trays: number | null;
}

/** Scales a recipe to grams, good pieces or whole trays. Each loss divides. */
export const scaleRecipe = (
  recipe: ScalableRecipe,
  target: ScalingTarget,
): Result<ScaledRecipe, ScalingRefusal> =>
  recipe.yieldPieces === null ? scaleByWeight(recipe, target) : scaleByPiece(recipe, target);

const scaleByWeight = (
  recipe: ScalableRecipe,
  target: ScalingTarget,
): Result<ScaledRecipe, ScalingRefusal> => {
  if (target.kind !== 'grams' || !target.massG.greaterThan(0)) {
    return unfit(say`This recipe is kept by weight: ask for grams above zero.`);
  }
  const yields = massYield(recipe);
  if (!yields.ok) return yields;
  if (!yields.value.greaterThan(0)) return yieldsNothing();
  const factor = target.massG.dividedBy(yields.value);
  return ok({
    factor,
    lines: recipe.lines.map((line) => scaledLine(line, line.quantity.times(factor), [])),
    expectedMassG: target.massG,
    expectedPieces: null,
    piecesToMake: null,
    trays: null,
  });
};

/** Grams that a recipe kept by weight gives as written: as stated, or from lines and losses. */
export const massYield = (recipe: ScalableRecipe): Result<Decimal, ScalingRefusal> => {
  if (recipe.yieldMassG) return ok(recipe.yieldMassG);
  const flow = flowOf(recipe.lines.filter(isWeighedIn).map(weighedLine), recipe.losses);
  return flow.ok ? ok(flow.value.outG) : flow;
};

/** Packaging and things kept by the piece are no part of a pot. */
const isWeighedIn = (line: ScalableLine): boolean => line.unit === 'g' && line.role !== 'packaging';

const weighedLine = (line: ScalableLine): WeighedLine => ({
  massG: line.quantity,
  infusion: line.role === 'infusion',
});

const scaleByPiece = (
  recipe: ScalableRecipe,
  target: ScalingTarget,
): Result<ScaledRecipe, ScalingRefusal> => {
  const good = yieldRatio(recipe.losses.filter(isLostByPiece));
  if (!good.ok) return good;
  const count = piecesToMake(recipe.cavitiesPerTray, target, good.value);
  if (!count.ok) return count;
  const { pieces, trays } = count.value;
  if (!recipe.yieldPieces) return yieldsNothing();
  const factor = pieces.dividedBy(recipe.yieldPieces);
  const lines: ScaledLine[] = [];
  for (const line of recipe.lines) {
    const losses = line.unit === 'g' ? weightLossesOf(recipe.losses, line.role) : [];
    const ratio = yieldRatio(losses);
    if (!ratio.ok) return ratio;
    const quantity = line.quantity.times(factor).dividedBy(ratio.value);
    lines.push(scaledLine(line, quantity, carryThrough(quantity, losses)));
  }
  return ok({
    factor,
    lines,
    expectedMassG: null,
    expectedPieces: pieces.times(good.value).floor(),
    piecesToMake: pieces,
    trays,
  });
};

const scaledLine = (
  line: ScalableLine,
  exactQuantity: Decimal,
  steps: readonly CarriedStep[],
): ScaledLine => ({
  ...line,
  exactQuantity,
  quantity:
    line.unit === 'pc' ? wholePieces(exactQuantity) : roundTo(exactQuantity, QUANTITY_PLACES),
  steps,
});

/** Up to whole pieces; a remainder under a millionth is the division's own rounding, not a piece. */
const wholePieces = (exact: Decimal): Decimal => roundTo(exact, 6).ceil();

const yieldsNothing = (): Result<never, ScalingRefusal> =>
  refuse({
    code: 'recipe-yields-nothing',
    detail: say`This recipe gives nothing as written: add lines, or state what it yields.`,
  });
