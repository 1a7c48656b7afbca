import {
  Choice,
  DecimalText,
  Flag,
  Grams,
  ListOf,
  Money,
  Nested,
  Text,
  Texts,
  Whole,
} from '../../platform/dto';

/** A short warning that stands beside the numbers; none of them may be shown without it. */
export class CautionView {
  @Text()
  code: string;

  @Choice(['note', 'warning'])
  level: string;

  @Text({ max: 600 })
  text: string;
}

export class NamedFigureView {
  @Text()
  name: string;

  @DecimalText()
  gramsPer100g: string;
}

export class LossesView {
  @Grams()
  steamGrams: string;

  @Grams()
  heldBackGrams: string;

  @Grams()
  strainedOutGrams: string;

  @Grams()
  scrapedGrams: string;
}

export class CompositionView {
  @Grams()
  inputGrams: string;

  @Grams()
  outputGrams: string;

  @Nested(() => LossesView)
  losses: LossesView;

  @ListOf(() => NamedFigureView, { description: 'Parts that sum to 100 g; those above nought' })
  parts: NamedFigureView[];

  @ListOf(() => NamedFigureView, { description: 'Sums and shares that cut across the parts' })
  totals: NamedFigureView[];

  @DecimalText({ nullable: true, places: 3 })
  densityGramsPerMl: string | null;

  @DecimalText({ nullable: true, places: 1, description: 'Grams of sucrose as sweet as 100 g' })
  relativeSweetness: string | null;

  @DecimalText({ nullable: true, places: 3, description: 'Milk fat in milk fat and cocoa butter' })
  milkFatRatio: string | null;

  @DecimalText({ nullable: true, places: 3, description: 'Nut and other liquid fat in all fat' })
  softFatRatio: string | null;
}

export class RecipeBalanceView {
  @Text()
  quantity: string;

  @DecimalText({ places: 2 })
  value: string;

  @DecimalText({ places: 2 })
  low: string;

  @DecimalText({ places: 2 })
  high: string;

  @Choice(['in', 'low', 'high'])
  verdict: string;

  @Text({ max: 300 })
  reason: string;

  @Text()
  source: string;
}

export class GrowthView {
  @Text()
  organism: string;

  @Choice(['pathogen', 'spoilage'])
  group: string;

  @DecimalText({ places: 3 })
  leastWaterActivity: string;

  @Text()
  printed: string;

  @Text()
  source: string;
}

export class WaterActivityView {
  @Choice(['estimated', 'measured', 'outside', 'none'])
  status: string;

  @DecimalText({
    nullable: true,
    description: 'Two decimals when estimated; null outside the model',
  })
  value: string | null;

  @DecimalText({ nullable: true, places: 4 })
  error: string | null;

  @DecimalText({ nullable: true, places: 4, description: 'Wet end, that limits are read against' })
  worst: string | null;

  @DecimalText({ nullable: true, places: 4, description: 'Estimate with all sugar dissolved' })
  allDissolved: string | null;

  @DecimalText({ nullable: true, places: 4, description: 'Estimate with sugar capped' })
  capped: string | null;

  @DecimalText({ nullable: true, places: 2, description: 'The estimate beside a measurement' })
  estimate: string | null;

  @Text({ nullable: true, description: 'Why there is no number' })
  reason: string | null;

  @ListOf(() => GrowthView, { description: 'What may grow at the wet end' })
  mayGrow: GrowthView[];
}

export class LifeLimitView {
  @Text()
  kind: string;

  @Whole({ nullable: true })
  lowDays: number | null;

  @Whole({ nullable: true })
  capDays: number | null;

  @Text({ max: 400 })
  reason: string;

  @Text({ max: 300 })
  source: string;

  @Flag()
  rules: boolean;
}

export class ShelfLifeView {
  @Whole({ nullable: true, description: 'What a date may use; null while no life is stated' })
  days: number | null;

  @Whole({ nullable: true, description: 'A suggestion, never a date' })
  suggestedDays: number | null;

  @Text({ nullable: true })
  basis: string | null;

  @Text({ nullable: true })
  document: string | null;

  @ListOf(() => LifeLimitView)
  limits: LifeLimitView[];

  @Text({ nullable: true, description: 'US Food Code Table B: stable or assess' })
  decisionTable: string | null;

  @Flag({ nullable: true, description: 'Regulation (EC) 2073/2005: growth not supported' })
  listeriaNotSupported: boolean | null;
}

export class DesignedAllergenView {
  @Text()
  allergen: string;

  @Choice(['contains', 'may_contain', 'unknown'])
  presence: string;

  @Texts()
  from: string[];
}

export class NutrientView {
  @Text()
  nutrient: string;

  @DecimalText({ nullable: true, description: 'Null: an ingredient doesn’t state it' })
  per100g: string | null;
}

export class ChocolateShareView {
  @DecimalText({ places: 2 })
  chocolatePercent: string;

  @Flag()
  enough: boolean;

  @Text({ max: 300 })
  reason: string;

  @Text({ max: 300 })
  caution: string;
}

export class DesignedCostView {
  @Money({ nullable: true, description: 'Per kg, or per piece of what is kept by the piece' })
  costPerUnit: string | null;

  @Choice(['kg', 'pc'])
  per: string;

  @Text({ nullable: true, max: 400, description: 'Why it can’t be stated' })
  missing: string | null;
}

export class EnergyView {
  @DecimalText({
    places: 1,
    description: 'kJ in 100 g, by the factors of Regulation (EU) 1169/2011',
  })
  kJ: string;

  @DecimalText({ places: 1, description: 'kcal in 100 g, by factors of its own' })
  kcal: string;
}

export class AnalysisView {
  @Nested(() => CompositionView)
  composition: CompositionView;

  @ListOf(() => RecipeBalanceView)
  balance: RecipeBalanceView[];

  @Nested(() => WaterActivityView)
  waterActivity: WaterActivityView;

  @Nested(() => ShelfLifeView)
  shelfLife: ShelfLifeView;

  @ListOf(() => DesignedAllergenView, { description: 'Absent ones are left out' })
  allergens: DesignedAllergenView[];

  @ListOf(() => NutrientView)
  nutrition: NutrientView[];

  @Nested(() => EnergyView, {
    nullable: true,
    description: 'Null: a nutrient that counts isn’t known',
  })
  energy: EnergyView | null;

  @Nested(() => ChocolateShareView, { nullable: true })
  chocolateShare: ChocolateShareView | null;

  @Nested(() => DesignedCostView)
  cost: DesignedCostView;

  @ListOf(() => CautionView)
  cautions: CautionView[];
}
