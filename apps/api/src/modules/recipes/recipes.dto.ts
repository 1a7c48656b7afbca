import { GANACHE_USES } from '../../domain/composition';
import { LINE_ROLES } from '../../domain/recipe';
import { LIFE_BASES } from '../../domain/shelf-life';
import {
  Choice,
  DecimalText,
  Grams,
  Id,
  ListOf,
  Nested,
  Quantity,
  Text,
  Texts,
  Whole,
} from '../../platform/dto';

export const LOSS_KINDS = [
  'steam',
  'held_back',
  'scrapings',
  'rejects',
  'samples',
  'other',
] as const;
export const MEASURES = [
  'temp_c',
  'humidity_percent',
  'water_activity',
  'ph',
  'brix',
  'mass_g',
] as const;
export const DATE_KINDS = ['best_before', 'use_by'] as const;

export class RecipeLineDto {
  @Id({ description: 'The component: an ingredient, or anything with a recipe of its own' })
  itemId: string;

  @Quantity({ description: 'Grams, or pieces of a component that is kept by the piece' })
  quantity: string;

  @Choice(LINE_ROLES)
  role: string;

  @Text({ optional: true, nullable: true, max: 300 })
  note?: string | null;
}

export class ExpectedLossDto {
  @Text({ max: 80 })
  step: string;

  @Choice(LOSS_KINDS)
  kind: string;

  @DecimalText({ places: 3, description: 'Per cent of what goes into the step, 0 to under 100' })
  percent: string;

  @Texts({ optional: true, max: 20, maxItems: 8, description: 'Roles of lines that it touches' })
  roles?: string[];

  @Whole({ optional: true, min: 1, max: 200, description: 'Acts after this line, from 1' })
  afterLine?: number;

  @DecimalText({
    optional: true,
    places: 3,
    description: 'Liquid held back: grams per gram of strained solids, instead of the per cent',
  })
  retentionRatio?: string;
}

export class StepCheckDto {
  @Choice(MEASURES)
  measure: string;

  @DecimalText({ optional: true, nullable: true, places: 4, negative: true })
  low?: string | null;

  @DecimalText({ optional: true, nullable: true, places: 4, negative: true })
  high?: string | null;

  @Text({ optional: true, max: 12 })
  unit?: string;
}

export class RecipeStepDto {
  @Text({ max: 120 })
  title: string;

  @Text({ optional: true, max: 4000, empty: true })
  text?: string;

  @ListOf(() => StepCheckDto, { optional: true, max: 20 })
  checks?: StepCheckDto[];

  @DecimalText({ optional: true, nullable: true, places: 2, description: 'Rest after the step' })
  restHours?: string | null;
}

/** A recipe version as it is written; the same for a draft that is not saved. */
export class RecipeVersionDto {
  @ListOf(() => RecipeLineDto, { min: 1, max: 100 })
  lines: RecipeLineDto[];

  @ListOf(() => ExpectedLossDto, { optional: true, max: 20 })
  expectedLosses?: ExpectedLossDto[];

  @ListOf(() => RecipeStepDto, { optional: true, max: 60 })
  steps?: RecipeStepDto[];

  @Grams({ optional: true, nullable: true, description: 'What the lines give after all losses' })
  yieldGrams?: string | null;

  @Whole({ optional: true, nullable: true, min: 1, max: 1_000_000, description: 'Pieces or boxes' })
  yieldPieces?: number | null;

  @Whole({ optional: true, nullable: true, max: 3650 })
  shelfLifeDays?: number | null;

  @Choice(LIFE_BASES, { optional: true, nullable: true })
  shelfLifeBasis?: string | null;

  @Text({ optional: true, nullable: true, max: 300, description: 'The test that proves the life' })
  shelfLifeDocument?: string | null;

  @Choice(DATE_KINDS, { optional: true })
  dateKind?: string;

  @Whole({ optional: true, nullable: true, max: 365, description: 'Null: freezing isn’t allowed' })
  lifeAfterThawDays?: number | null;

  @DecimalText({ optional: true, nullable: true, places: 2 })
  labourMinutes?: string | null;

  @Text({ optional: true, nullable: true, max: 60 })
  labourRole?: string | null;

  @Id({ optional: true, nullable: true })
  mouldDesignId?: string | null;

  @Choice(GANACHE_USES, { optional: true, nullable: true })
  ganacheUse?: string | null;

  @Text({ optional: true, nullable: true, max: 2000 })
  note?: string | null;
}

export class DraftAnalysisDto {
  @Id({ description: 'What the draft would make' })
  itemId: string;

  @Nested(() => RecipeVersionDto)
  recipe: RecipeVersionDto;
}

export const SCALING_KINDS = ['grams', 'pieces', 'trays', 'boxes'] as const;

export class ScaleDto {
  @Choice(SCALING_KINDS, { description: 'Pieces and boxes are good ones, after every loss' })
  kind: string;

  @Quantity()
  quantity: string;
}
