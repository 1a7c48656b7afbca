import {
  BALANCE_SOURCE,
  cocoaSolidsG,
  PARTS,
  percentOf,
  totalFatG,
  totalPolyolsG,
  totalSugarsG,
} from '../../domain/composition';
import { energyOf } from '../../domain/nutrition';
import type { RecipeAnalysis, RecipeContent } from '../../domain/recipe';
import { NUTRIENTS } from '../../domain/specification';
import { Decimal } from '../../domain/units';
import { quantityText } from '../../platform/database/decimals';
import type {
  AnalysisView,
  CompositionView,
  DesignedCostView,
  EnergyView,
  NamedFigureView,
  NutrientView,
  ShelfLifeView,
  WaterActivityView,
} from './analysis.dto';

const compositionView = (analysis: RecipeAnalysis): CompositionView => {
  const { pot } = analysis;
  const makeUp = pot.content;
  const figure = (name: string, grams: Decimal): NamedFigureView => ({
    name,
    gramsPer100g: percentOf(grams, makeUp).toFixed(3),
  });
  return {
    inputGrams: quantityText(pot.inputG),
    outputGrams: quantityText(analysis.outG),
    losses: {
      steamGrams: quantityText(pot.steamG),
      heldBackGrams: quantityText(pot.heldBackG),
      strainedOutGrams: quantityText(pot.strainedOutG),
      scrapedGrams: quantityText(pot.removedG),
    },
    parts: PARTS.filter((part) => !makeUp.parts[part].isZero()).map((part) =>
      figure(part, makeUp.parts[part]),
    ),
    totals: [
      figure('totalFat', totalFatG(makeUp)),
      figure('totalSugars', totalSugarsG(makeUp)),
      figure('totalPolyols', totalPolyolsG(makeUp)),
      figure('cocoaSolids', cocoaSolidsG(makeUp)),
      figure('fatFreeCocoa', makeUp.fatFreeCocoa),
      figure('milkSolids', makeUp.milkSolids),
    ],
    densityGramsPerMl: analysis.densityGPerMl?.toFixed(3) ?? null,
    relativeSweetness: analysis.relativeSweetness?.toFixed(1) ?? null,
    milkFatRatio: analysis.fatMix.milkFatRatio?.toFixed(3) ?? null,
    softFatRatio: analysis.fatMix.softFatRatio?.toFixed(3) ?? null,
  };
};

const NO_NUMBER = { value: null, error: null, worst: null, allDissolved: null, capped: null };

const waterActivityView = (analysis: RecipeAnalysis): WaterActivityView => {
  const { estimate, waterActivity: ruling, life } = analysis;
  const mayGrow = life.mayGrow.map((row) => ({
    organism: row.organism,
    group: row.group,
    leastWaterActivity: row.leastWaterActivity.toFixed(3),
    printed: row.printed,
    source: row.source,
  }));
  if (!estimate) return { ...NO_NUMBER, status: 'none', estimate: null, reason: null, mayGrow };
  const modelled =
    estimate.status === 'estimated'
      ? {
          value: estimate.value.toFixed(2),
          error: estimate.error.toFixed(4),
          allDissolved: estimate.allDissolved.toFixed(4),
          capped: estimate.capped.toFixed(4),
          estimate: estimate.value.toFixed(2),
          reason: null,
        }
      : { ...NO_NUMBER, estimate: null, reason: estimate.reason };
  const worst = ruling.worst?.toFixed(4) ?? null;
  if (ruling.basis !== 'measured') return { ...modelled, status: estimate.status, worst, mayGrow };
  const [value, error] = [ruling.value.toFixed(4), ruling.error.toFixed(4)];
  return { ...modelled, status: 'measured', value, error, worst, mayGrow };
};

const shelfLifeView = (analysis: RecipeAnalysis, content: RecipeContent): ShelfLifeView => {
  const { life } = analysis;
  return {
    days: life.days,
    suggestedDays: life.suggestedDays,
    basis: content.life.basis,
    document: content.life.document,
    limits: life.limits.map((limit) => ({ ...limit, rules: limit === life.ruling })),
    decisionTable: life.decisionTable,
    listeriaNotSupported: life.listeriaNotSupported,
  };
};

const nutritionView = ({ nutrition }: RecipeAnalysis): NutrientView[] =>
  NUTRIENTS.map((nutrient) => ({
    nutrient,
    per100g: nutrition?.[nutrient]?.toFixed(3) ?? null,
  }));

const energyView = ({ nutrition }: RecipeAnalysis): EnergyView | null => {
  const energy = nutrition && energyOf(nutrition);
  return energy && { kJ: energy.kJ.toFixed(1), kcal: energy.kcal.toFixed(1) };
};

export const analysisView = (
  analysis: RecipeAnalysis,
  content: RecipeContent,
  cost: DesignedCostView,
): AnalysisView => {
  const share = analysis.chocolateShare;
  return {
    composition: compositionView(analysis),
    balance: analysis.balance.map((row) => ({
      quantity: row.quantity,
      value: row.value.toFixed(2),
      low: row.low.toFixed(2),
      high: row.high.toFixed(2),
      verdict: row.verdict,
      reason: row.reason,
      source: BALANCE_SOURCE,
    })),
    waterActivity: waterActivityView(analysis),
    shelfLife: shelfLifeView(analysis, content),
    allergens: analysis.allergens.map((row) => ({ ...row, from: [...row.from] })),
    nutrition: nutritionView(analysis),
    energy: energyView(analysis),
    chocolateShare: share && {
      chocolatePercent: share.chocolatePercent.toFixed(2),
      enough: share.enough,
      reason: share.reason,
      caution: share.caution,
    },
    cost,
    cautions: analysis.cautions.map((row) => ({ ...row })),
  };
};
