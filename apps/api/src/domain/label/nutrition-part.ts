import { finding } from '../declaration';
import {
  americanDuty,
  euPanel,
  europeanDuty,
  missingForUs,
  mixNutrition,
  servingOf,
  usPanel,
  type MixNutrition,
  type NutritionDuty,
} from '../nutrition';
import type { LabelAsk } from './ask';
import type { LabelFinding, NutritionPanel } from './content';
import { named, say } from '../words/say';

export interface NutritionPart {
  readonly panels: readonly NutritionPanel[];
  readonly findings: readonly LabelFinding[];
  readonly nutrition: MixNutrition;
}

/** The nutrition panels that are due or wanted, and why or why not. */
export const nutritionPart = (ask: LabelAsk): NutritionPart => {
  const nutrition = mixNutrition(ask.mix);
  const duty = dutyOf(ask);
  const findings = [
    finding('note', duty.required ? 'nutrition-due' : 'nutrition-exempt', duty.reason),
  ];
  if (!duty.required && !ask.settings.nutrition.always) {
    return { panels: [], findings, nutrition };
  }
  const panels = panelsOf(ask, nutrition);
  if (panels.length > 0) return { panels, findings, nutrition };
  const severity = duty.required ? 'refusal' : 'warning';
  return { panels, findings: [...findings, incomplete(severity, nutrition, ask)], nutrition };
};

const dutyOf = ({ market, settings }: LabelAsk): NutritionDuty => {
  const facts = { ...settings.nutrition, largestSurfaceCm2: settings.largestSurfaceCm2 };
  return market.nutrition === 'per_100_g' ? europeanDuty(facts) : americanDuty(facts);
};

const panelsOf = (ask: LabelAsk, { per100g }: MixNutrition): NutritionPanel[] => {
  const { nutrition, pack } = ask.settings;
  if (ask.market.nutrition === 'per_serving') {
    const { pieceG, candyKind: kind, preferMorePieces: preferMore } = nutrition;
    const { netG } = pack;
    const panel = usPanel(per100g, { ...servingOf({ netG, pieceG, kind, preferMore }), netG });
    return panel ? [panel] : [];
  }
  const panels = ask.languages.map((language) => euPanel(per100g, { ...nutrition, language }));
  return panels.filter((panel) => panel !== null);
};

const EU_NEEDED = [
  'fat', 'saturates', 'carbohydrate', 'sugars', 'fibre', 'protein', 'salt',
] as const; // prettier-ignore

const incomplete = (
  severity: 'refusal' | 'warning',
  { missing, per100g }: MixNutrition,
  ask: LabelAsk,
): LabelFinding => {
  const needed = ask.market.nutrition === 'per_serving' ? missingForUs(per100g) : EU_NEEDED;
  const gaps = needed.flatMap((nutrient) => {
    const lots = missing.get(nutrient);
    return lots ? [say`${named(nutrient)} (${lots.join(', ')})`] : [];
  });
  const detail = say`Nutrition can’t be declared; these figures aren’t stated: ${gaps.join('; ')}.`;
  return finding(severity, 'nutrition-incomplete', detail, { missing: gaps });
};
