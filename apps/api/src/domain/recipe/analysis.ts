import {
  compositionCautions,
  densityGPerMl,
  fatMix,
  ganacheBalance,
  relativeSweetness,
  totalG,
  type BalanceFinding,
  type Caution,
  type FatMix,
  type MakeUp,
  type Pot,
} from '../composition';
import { chocolateShare, type ChocolateShare } from '../moulding';
import { ok, type Result } from '../refusals/result';
import { shelfLife, type ComponentLife, type LifeFacts, type ShelfLife } from '../shelf-life';
import type { NutritionPer100g } from '../specification';
import { Decimal, sum } from '../units';
import {
  estimateWaterActivity,
  rulingWaterActivity,
  type MeasuredWaterActivity,
  type RulingWaterActivity,
  type WaterActivity,
} from '../water-activity';
import { designedAllergens, leavesOf, type DesignedAllergen } from './allergens';
import type { RecipeBook } from './book';
import { recipeCautions } from './cautions';
import { linesInGrams, mixRecipe, type MixRefusal } from './mix';
import { designedNutrition } from './nutrition';
import type { RecipeContent } from './recipe';

export interface AnalysisFacts {
  readonly content: RecipeContent;
  readonly book: RecipeBook;
  /** Readings of this very recipe version. */
  readonly readings: readonly MeasuredWaterActivity[];
  readonly ph: Decimal | null;
}

/** What a recipe comes to as designed. No figure is meant to be shown without its cautions. */
export interface RecipeAnalysis {
  readonly pot: Pot;
  readonly outG: Decimal;
  readonly densityGPerMl: Decimal | null;
  readonly relativeSweetness: Decimal | null;
  readonly fatMix: FatMix;
  /** Empty unless the recipe says how its ganache is used. */
  readonly balance: readonly BalanceFinding[];
  readonly estimate: WaterActivity | null;
  readonly waterActivity: RulingWaterActivity;
  readonly life: ShelfLife;
  readonly allergens: readonly DesignedAllergen[];
  readonly nutrition: NutritionPer100g | null;
  /** Of a piece with a shell; null for anything else. */
  readonly chocolateShare: ChocolateShare | null;
  readonly cautions: readonly Caution[];
}

const NOT_READ: RulingWaterActivity = { basis: 'none', worst: null, cautions: [] };

/** Analyses a recipe as designed; refuses only what can't be computed (more steam than water). */
export const analyseRecipe = (facts: AnalysisFacts): Result<RecipeAnalysis, MixRefusal> => {
  const { content, book } = facts;
  const mixed = mixRecipe(content, book);
  if (!mixed.ok) return mixed;
  const makeUp = mixed.value.content;
  const isFilling = content.yieldPieces === null;
  const estimate = isFilling ? estimateWaterActivity(makeUp) : null;
  const waterActivity = estimate ? rulingWaterActivity(estimate, facts.readings) : NOT_READ;
  const life = shelfLife(lifeFactsOf(facts, makeUp, waterActivity));
  const leaves = leavesOf(content, book);
  const outG = totalG(makeUp);
  return ok({
    pot: mixed.value,
    outG,
    densityGPerMl: densityGPerMl(makeUp),
    relativeSweetness: relativeSweetness(makeUp),
    fatMix: fatMix(makeUp),
    balance: content.use && outG.greaterThan(0) ? ganacheBalance(makeUp, content.use) : [],
    estimate,
    waterActivity,
    life,
    allergens: designedAllergens(leaves),
    nutrition: designedNutrition(content, book, outG, makeUp.parts.alcohol),
    chocolateShare: shareOfShell(content, book),
    cautions: distinct([
      ...compositionCautions(makeUp),
      ...waterActivity.cautions,
      ...life.cautions,
      ...recipeCautions(content, book, leaves),
    ]),
  });
};

/** What the life of a recipe is judged by. */
export const lifeFactsOf = (
  { content, book, ph }: AnalysisFacts,
  makeUp: MakeUp,
  waterActivity: RulingWaterActivity,
): LifeFacts => ({
  stated: content.life,
  waterActivity,
  makeUp,
  ph,
  components: componentLives(content, book),
  isFilling: content.yieldPieces === null,
});

const distinct = (cautions: readonly Caution[]): Caution[] => [
  ...new Map(cautions.map((caution) => [caution.code, caution])).values(),
];

const componentLives = (content: RecipeContent, book: RecipeBook): ComponentLife[] =>
  [...new Set(content.lines.map((line) => line.itemId))].flatMap((id) => {
    const item = book.get(id);
    return item?.recipe ? [{ name: item.name, days: item.recipe.life.days }] : [];
  });

/** Shell and cap of everything that is eaten; decoration is no chocolate. */
const shareOfShell = (content: RecipeContent, book: RecipeBook): ChocolateShare | null => {
  const lines = linesInGrams(content, book);
  const chocolate = lines.filter((line) => line.role === 'shell' || line.role === 'cap');
  if (chocolate.length === 0) return null;
  const grams = (of: typeof lines): Decimal => sum(of.map((line) => line.massG));
  return chocolateShare(grams(chocolate), grams(lines));
};
