import { Choice, DecimalText, Flag, Grams, Texts, Whole } from '../../platform/dto';

export const TARGET_KINDS = ['margin', 'mark_up'] as const;
export const PRICE_LISTS = ['counter', 'trade'] as const;

const percent = { places: 3, description: 'Per cent' } as const;

/** Rules for all prices. Which of them the law of the place allows is the workshop's to look up. */
export class PricingSettingsDto {
  @Texts({
    max: 12,
    maxItems: 20,
    description: 'Price endings from 0 to below the step, as "0.90"',
  })
  endings: string[];

  @DecimalText({ places: 2, description: 'Endings repeat in steps of this, usually 1.00' })
  endingStep: string;

  @Choice(['up', 'down', 'nearest'])
  endingDirection: string;

  @DecimalText({ ...percent, description: 'A margin below this is warned about' })
  marginFloorPercent: string;

  @Grams({ nullable: true, description: 'Packs lighter than this need no price per kg' })
  unitPriceExemptBelowGrams: string | null;

  @Flag({ description: 'Mixed assortments need no price per kg' })
  unitPriceExemptMixed: boolean;
}

export class PricingSettingsView extends PricingSettingsDto {
  @Whole({ description: 'Of the workshop: for If-Match' })
  version: number;
}

/** What one item is to earn: a margin is a part of the price, a mark-up is laid on the cost. */
export class PriceRuleDto {
  @Choice(TARGET_KINDS)
  counterTargetKind: string;

  @DecimalText(percent)
  counterTargetPercent: string;

  @Choice(TARGET_KINDS)
  tradeTargetKind: string;

  @DecimalText(percent)
  tradeTargetPercent: string;

  @Flag({ description: 'Different foods in one box' })
  mixedAssortment: boolean;
}

export class PriceRuleView extends PriceRuleDto {}
