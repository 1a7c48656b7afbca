import {
  Choice,
  DecimalText,
  Flag,
  Grams,
  Id,
  JsonObject,
  Money,
  Text,
  Whole,
} from '../../platform/dto';
import { PageQuery } from '../../platform/paging/page';

export const ITEM_KINDS = ['ingredient', 'packaging', 'filling', 'piece', 'box'] as const;
export const UNITS = ['g', 'pc'] as const;

const warmest = {
  places: 2,
  negative: true,
  nullable: true,
  description: 'Warmest on arrival, °C; null when it does not travel cold',
} as const;

const gtin = { nullable: true, max: 14, description: 'GTIN of 8, 12, 13 or 14 digits' } as const;

export class CreateItemDto {
  @Text({ max: 120 })
  name: string;

  @Choice(ITEM_KINDS)
  kind: string;

  @Choice(UNITS, {
    optional: true,
    description: 'g or pc; fillings are kept in g, pieces and boxes in pc',
  })
  unit?: string;

  @Flag({ optional: true })
  perishable?: boolean;

  @Flag({ optional: true, description: 'A lot’s own date caps the date of what is made with it' })
  capsDate?: boolean;

  @Flag({ optional: true, description: 'Strained out again, as tea leaves are' })
  infusionOnly?: boolean;

  @Flag({ optional: true })
  processingAid?: boolean;

  @DecimalText({ ...warmest, optional: true })
  warmestTempC?: string | null;

  @Text({ ...gtin, optional: true })
  gtin?: string | null;

  @Text({ optional: true, nullable: true, max: 300 })
  storageConditions?: string | null;

  @Grams({
    optional: true,
    nullable: true,
    description: 'Nominal weight of food of one piece or box',
  })
  nominalMassGrams?: string | null;

  @Text({ optional: true, nullable: true, max: 60 })
  vatClass?: string | null;

  @Money({ optional: true, nullable: true, description: 'Per kg (unit g) or per piece (unit pc)' })
  replacementPrice?: string | null;

  @Text({ optional: true, nullable: true, max: 2000 })
  note?: string | null;
}

export class ChangeItemDto {
  @Text({ optional: true, max: 120 })
  name?: string;

  @Flag({ optional: true })
  perishable?: boolean;

  @Flag({ optional: true })
  capsDate?: boolean;

  @Flag({ optional: true })
  infusionOnly?: boolean;

  @Flag({ optional: true })
  processingAid?: boolean;

  @DecimalText({ ...warmest, optional: true })
  warmestTempC?: string | null;

  @Text({ ...gtin, optional: true })
  gtin?: string | null;

  @Text({ optional: true, nullable: true, max: 300 })
  storageConditions?: string | null;

  @Grams({ optional: true, nullable: true })
  nominalMassGrams?: string | null;

  @Text({ optional: true, nullable: true, max: 60 })
  vatClass?: string | null;

  @Money({ optional: true, nullable: true })
  replacementPrice?: string | null;

  @Text({ optional: true, nullable: true, max: 2000 })
  note?: string | null;

  @Flag({ optional: true })
  active?: boolean;
}

export class ItemQuery extends PageQuery {
  @Choice(ITEM_KINDS, { optional: true })
  kind?: string;

  @Text({ optional: true, max: 80, description: 'Part of the name' })
  name?: string;
}

export class ItemView {
  @Id()
  id: string;

  @Text()
  name: string;

  @Choice(ITEM_KINDS)
  kind: string;

  @Choice(UNITS)
  unit: string;

  @Flag()
  perishable: boolean;

  @Flag()
  capsDate: boolean;

  @Flag()
  infusionOnly: boolean;

  @Flag()
  processingAid: boolean;

  @DecimalText(warmest)
  warmestTempC: string | null;

  @Text({ nullable: true })
  gtin: string | null;

  @Text({ nullable: true })
  storageConditions: string | null;

  @Grams({ nullable: true })
  nominalMassGrams: string | null;

  @Text({ nullable: true })
  vatClass: string | null;

  @Money({ nullable: true })
  replacementPrice: string | null;

  @Text({ nullable: true })
  note: string | null;

  @JsonObject({ description: 'Settings of other slices, as the label of a box' })
  settings: Record<string, unknown>;

  @Flag()
  active: boolean;

  @Whole()
  version: number;
}
