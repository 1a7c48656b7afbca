import { DecimalText, Grams, ListOf, Text } from '../../platform/dto';

export class InfusionWeightsDto {
  @Grams({ description: 'Liquid before the boil' })
  liquidGrams: string;

  @Grams({ description: 'After the boil, without the solids' })
  boiledGrams: string;

  @Grams({ description: 'After straining' })
  strainedGrams: string;

  @Grams({ description: 'Dry tea, spice or pod' })
  solidsGrams: string;
}

export class InfusionPlanDto {
  @Grams()
  liquidGrams: string;

  @Grams()
  steamGrams: string;

  @Grams()
  solidsGrams: string;

  @DecimalText({
    places: 3,
    description: 'Grams of liquid kept per gram of solids: weigh your own',
  })
  retentionRatio: string;
}

export class InfusionView {
  @Grams()
  steamGrams: string;

  @Grams()
  heldBackGrams: string;

  @DecimalText({ places: 3 })
  retentionRatio: string;

  @Grams({ description: 'To come back to the first weight: a lot of its own, drawn on its own' })
  topUpGrams: string;

  @Grams({ description: 'Of the first liquid, what went with the solids' })
  discardedLiquidGrams: string;

  @Text({ max: 300 })
  caution: string;
}

export class RetentionGuideView {
  @Text()
  what: string;

  @DecimalText()
  low: string;

  @DecimalText()
  high: string;

  @Text()
  source: string;
}

export class RetentionGuidesView {
  @ListOf(() => RetentionGuideView)
  items: RetentionGuideView[];
}
