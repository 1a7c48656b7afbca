import { CHOCOLATE_KINDS } from '../../domain/specification';
import {
  Choice,
  Choices,
  DecimalText,
  Flag,
  Grams,
  Ids,
  JsonObject,
  Nested,
  Whole,
} from '../../platform/dto';
import { LANGUAGES, MARKETS } from '../workshop';

const words = { description: 'A text by language, as { "en": "…" }' } as const;

export class NutritionSettingsDto {
  @Flag({ description: 'Printed also where no duty asks for it' })
  always: boolean;

  @Grams({ nullable: true })
  portionGrams: string | null;

  @Flag()
  referenceIntakes: boolean;

  @Flag()
  fibre: boolean;

  @Flag({ description: 'The salt is only what the ingredients hold by nature' })
  naturalSaltOnly: boolean;

  @Flag({ description: 'A nutrition or health claim is made: no exemption holds' })
  makesClaim: boolean;

  @Flag({ description: 'Small quantities, directly to the consumer or to local shops' })
  smallLocalMaker: boolean;

  @Flag({ description: 'Exempt by 21 CFR 101.9(j)' })
  usSmallBusiness: boolean;

  @Choice(['candy', 'hard_candy', 'baking_candy', 'after_dinner', 'marshmallow'])
  candyKind: string;

  @Grams({ nullable: true, description: 'Weight of one piece, for servings' })
  pieceGrams: string | null;

  @Flag()
  preferMorePieces: boolean;
}

/** How an item is labelled. */
export class LabelSettingsDto {
  @JsonObject({ ...words, description: 'Sales name by language' })
  names: Record<string, unknown>;

  @Choice(['filled_chocolate', 'praline', 'chocolate', 'assortment', 'confectionery'])
  legalName: string;

  @Choice(CHOCOLATE_KINDS, { nullable: true, description: 'For the legal name chocolate' })
  chocolateKind: string | null;

  @Flag({ description: 'For an assortment: nothing but chocolates lies in it' })
  onlyChocolates: boolean;

  @Choice(['nested', 'flattened'])
  listForm: string;

  @Choice(['name', 'e_number'])
  additiveForm: string;

  @Ids({ description: 'Items whose quantity is stated because the name speaks of them' })
  quantifiedItemIds: string[];

  @DecimalText({ places: 2, description: 'Largest surface of the pack' })
  largestSurfaceCm2: string;

  @DecimalText({ places: 2, description: 'Principal display panel, for the United States' })
  panelAreaCm2: string;

  @Choice(['loose', 'wrapped', 'singles', 'by_number'])
  packForm: string;

  @Grams({ nullable: true, description: 'Net weight; left empty, the item’s nominal weight' })
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

  @Flag()
  protectiveAtmosphere: boolean;

  @Choice(['none', 'own_qr', 'gs1datamatrix', 'digital_link', 'ean13'])
  symbol: string;

  @Grams({ description: 'What a person eats at one sitting, for cross-contact' })
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
