import { AMERICAN_CHOCOLATES } from '../../domain/chocolate-law';
import { CHOCOLATE_KINDS, GROUP_KINDS } from '../../domain/specification';
import {
  Choice,
  Choices,
  DecimalText,
  Flag,
  Grams,
  Id,
  Ids,
  JsonObject,
  ListOf,
  Nested,
  Whole,
} from '../../platform/dto';
import { LANGUAGES, MARKETS } from '../workshop';
import { NutritionSettingsDto } from './nutrition-settings.dto';

const words = { description: 'A text by language, as { "en": "…" }' } as const;

/** Two items that stand in for each other: "contains … and/or …" under 2 %. */
export class InterchangeableDto {
  @Id()
  itemId: string;

  @Id()
  orItemId: string;
}

/** How an item is labelled. */
export class LabelSettingsDto {
  @JsonObject({ ...words, description: 'Sales name by language' })
  names: Record<string, unknown>;

  @Choice(['filled_chocolate', 'praline', 'chocolate', 'assortment', 'confectionery'])
  legalName: string;

  @Choice(CHOCOLATE_KINDS, { nullable: true, description: 'For the legal name chocolate' })
  chocolateKind: string | null;

  @Choice(AMERICAN_CHOCOLATES, {
    nullable: true,
    description: 'Name in the United States; left empty, the one that follows from the kind',
  })
  americanChocolate: string | null;

  @Flag({ description: 'For an assortment: nothing but chocolates lies in it' })
  onlyChocolates: boolean;

  @Choice(['nested', 'flattened'])
  listForm: string;

  @Choice(['name', 'e_number'])
  additiveForm: string;

  @Ids({ description: 'Items whose quantity is stated because the name speaks of them' })
  quantifiedItemIds: string[];

  @Choices(GROUP_KINDS, {
    description: 'Kinds that the list names together (Annex VII Part A, points 4, 5, 8 and 9)',
  })
  listGroups: string[];

  @Flag({ description: 'Grouped oils and fats are said to be in varying proportions' })
  oilsVary: boolean;

  @ListOf(() => InterchangeableDto, {
    max: 20,
    description: 'Pairs that the list names as “and/or” (Annex VII Part A, point 7)',
  })
  interchangeable: InterchangeableDto[];

  @DecimalText({ places: 2, positive: true, description: 'Largest surface of the pack' })
  largestSurfaceCm2: string;

  @DecimalText({
    places: 2,
    positive: true,
    description: 'Principal display panel, for the United States',
  })
  panelAreaCm2: string;

  @Choice(['loose', 'wrapped', 'singles', 'by_number'])
  packForm: string;

  @Grams({
    nullable: true,
    positive: true,
    description: 'Net weight; left empty, the item’s nominal weight',
  })
  netGrams: string | null;

  @Whole({ nullable: true, min: 1, max: 10_000 })
  pieceCount: number | null;

  @Choice(['kg', 'g'])
  largeUnit: string;

  @Flag({ description: 'Print the e-mark once a batch was weighed and accepted' })
  eMark: boolean;

  @Choice(['full', 'shortest'])
  dateForm: string;

  @JsonObject({ ...words, description: 'Storage conditions by language' })
  storage: Record<string, unknown>;

  @JsonObject({ ...words, nullable: true, description: 'Statement of origin by language' })
  origin: Record<string, unknown> | null;

  @Choice(['unset', 'same', 'differs'], {
    description: 'Whether the primary ingredient comes from the origin that is given',
  })
  primaryOrigin: string;

  @JsonObject({
    ...words,
    nullable: true,
    description: 'Origin of the primary ingredient by language, where it differs',
  })
  primaryOriginText: Record<string, unknown> | null;

  @Flag()
  protectiveAtmosphere: boolean;

  @Choice(['none', 'own_qr', 'gs1datamatrix', 'digital_link', 'ean13'])
  symbol: string;

  @Grams({ positive: true, description: 'What a person eats at one sitting, for cross-contact' })
  sittingGrams: string;

  @Choice(MARKETS, { nullable: true, description: 'Left empty, the workshop’s market' })
  market: string | null;

  @Choices(LANGUAGES, { nullable: true })
  languages: string[] | null;

  @Nested(() => NutritionSettingsDto)
  nutrition: NutritionSettingsDto;
}

export class LabelSettingsView extends LabelSettingsDto {
  @Flag({ description: 'Nobody has set them yet: these are the usual ones' })
  usual: boolean;

  @Whole({ description: 'Of the item: for If-Match' })
  version: number;
}
