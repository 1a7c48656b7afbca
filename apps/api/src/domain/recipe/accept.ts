import { ok, refuse, type Result } from '../refusals/result';
import { massYield, type ScalingRefusal } from '../scaling';
import { acceptLife, type ShelfLifeRefusal } from '../shelf-life';
import { QUANTITY_PLACES, roundTo, type Decimal } from '../units';
import { analyseRecipe, lifeFactsOf, type AnalysisFacts } from './analysis';
import type { MixRefusal } from './mix';
import { say } from '../words/say';

/**
 * What a recipe must keep before it is saved: it can be mixed, it yields something, and its life is
 * one that its limits allow. Gives the yield to store in grams; null for what is kept by the piece.
 */
export const acceptRecipe = (
  facts: AnalysisFacts,
): Result<Decimal | null, MixRefusal | ScalingRefusal | ShelfLifeRefusal> => {
  const analysis = analyseRecipe(facts);
  if (!analysis.ok) return analysis;
  const { pot, waterActivity } = analysis.value;
  const life = acceptLife(lifeFactsOf(facts, pot.content, waterActivity));
  if (!life.ok) return life;
  if (facts.content.yieldPieces !== null) return ok(null);
  const grams = massYield({ ...facts.content, cavitiesPerTray: null });
  if (!grams.ok) return grams;
  const yieldG = roundTo(grams.value, QUANTITY_PLACES);
  if (yieldG.greaterThan(0)) return ok(yieldG);
  return refuse({
    code: 'recipe-yields-nothing',
    detail: say`These lines leave nothing after their losses.`,
  });
};
