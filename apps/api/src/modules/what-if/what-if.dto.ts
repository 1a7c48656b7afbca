import {
  Choice,
  Day,
  DecimalText,
  Id,
  Ids,
  ListOf,
  Money,
  Text,
  Texts,
  Whole,
} from '../../platform/dto';
import { CostStepView } from '../pricing';

export const CHANGE_KINDS = ['ingredient', 'ingredient_price', 'wage', 'loss', 'vat'] as const;

const signed = { places: 8, negative: true, optional: true } as const;

/** One thing that could be otherwise; which fields it takes depends on its kind. */
export class ChangeDto {
  @Choice(CHANGE_KINDS)
  kind: string;

  @Ids({ optional: true, description: 'ingredient, loss: these items' })
  itemIds?: string[];

  @Text({
    optional: true,
    max: 80,
    description: 'ingredient, loss: items whose name contains this, as "couverture"',
  })
  nameContains?: string;

  @Texts({ optional: true, max: 60, description: 'wage: these roles; all when left out' })
  roles?: string[];

  @DecimalText({ ...signed, description: 'ingredient, wage: dearer by so many per cent' })
  percent?: string;

  @Text({ optional: true, max: 12, description: 'Instead of percent, as "1/3"' })
  fraction?: string;

  @Money({ optional: true, description: 'ingredient_price: per kg or per piece' })
  price?: string;

  @DecimalText({ ...signed, description: 'loss: so many points of what goes in more' })
  points?: string;

  @Text({ optional: true, max: 60, description: 'vat: the product class' })
  productClass?: string;

  @DecimalText({ optional: true, places: 3, description: 'vat: its rate' })
  ratePercent?: string;
}

export class ScenarioDto {
  @Text({ max: 120 })
  name: string;

  @ListOf(() => ChangeDto, { min: 1, max: 50 })
  changes: ChangeDto[];
}

export class WhatIfDto {
  @ListOf(() => ScenarioDto, { min: 1, max: 10 })
  scenarios: ScenarioDto[];

  @Choice(['counter', 'trade'], { optional: true, description: 'counter unless it is said' })
  list?: 'counter' | 'trade';

  @Ids({ optional: true, description: 'Every piece and box with a recipe when left out' })
  itemIds?: string[];
}

export class CompareQuery {
  @Text({ max: 800, description: 'Ids of saved scenarios, with commas between' })
  ids: string;

  @Choice(['counter', 'trade'], { optional: true })
  list?: 'counter' | 'trade';
}

export class SaveScenarioDto extends ScenarioDto {
  @Text({ optional: true, nullable: true, max: 1000 })
  note?: string | null;
}

export class ScenarioView extends ScenarioDto {
  @Id()
  id: string;

  @Text({ nullable: true })
  note: string | null;

  @Whole()
  version: number;
}

const optionalDecimal = { nullable: true, negative: true } as const;

export class OutcomeView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Money()
  cost: string;

  @DecimalText({ places: 4, negative: true, description: 'Against the unchanged cost' })
  costChange: string;

  @DecimalText({ ...optionalDecimal, places: 2, description: 'Null when it has no price' })
  net: string | null;

  @DecimalText({ ...optionalDecimal, places: 2 })
  marginPercent: string | null;

  @DecimalText({ ...optionalDecimal, places: 2, description: 'Net price that keeps the margin' })
  netToKeepMargin: string | null;

  @ListOf(() => CostStepView)
  waterfall: CostStepView[];
}

export class ScenarioOutcomeView {
  @Text()
  name: string;

  @ListOf(() => OutcomeView)
  outcomes: OutcomeView[];
}

export class SkippedItemView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Text()
  reason: string;
}

export class WhatIfView {
  @Choice(['counter', 'trade'])
  list: string;

  @Day()
  on: string;

  @ListOf(() => ScenarioOutcomeView, { description: 'The unchanged one first' })
  scenarios: ScenarioOutcomeView[];

  @ListOf(() => SkippedItemView, { description: 'What can’t be costed today, and why' })
  skipped: SkippedItemView[];
}
