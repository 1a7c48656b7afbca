import {
  Choice,
  Choices,
  DecimalText,
  Id,
  Day,
  JsonObject,
  Money,
  Text,
  Texts,
  Whole,
} from '../../platform/dto';

export const MARKETS = ['EU', 'GB', 'NI', 'US'] as const;
export const LANGUAGES = ['en', 'fr', 'de', 'nl', 'it', 'es'] as const;
export const OVERHEAD_RULES = ['per_hour', 'per_piece', 'percent'] as const;

export class WorkshopView {
  @Text({ max: 120 })
  name: string;

  @Texts({ max: 120, maxItems: 6 })
  addressLines: string[];

  @Text({ nullable: true, max: 60 })
  phone: string | null;

  @Text({ nullable: true, max: 120 })
  email: string | null;

  @Choice(MARKETS)
  market: string;

  @Choices(LANGUAGES)
  languages: string[];

  @Text({ description: 'ISO 4217' })
  currency: string;

  @Text({ description: 'IANA time zone' })
  timeZone: string;

  @Text({ nullable: true, max: 12 })
  gs1CompanyPrefix: string | null;

  @Text({ max: 40 })
  codePattern: string;

  @Choice(OVERHEAD_RULES)
  overheadRule: string;

  @Money()
  overheadValue: string;

  @JsonObject()
  settings: Record<string, unknown>;

  @Whole()
  version: number;
}

export class ChangeWorkshopDto {
  @Text({ optional: true, max: 120 })
  name?: string;

  @Texts({ optional: true, max: 120, maxItems: 6 })
  addressLines?: string[];

  @Text({ optional: true, nullable: true, max: 60 })
  phone?: string | null;

  @Text({ optional: true, nullable: true, max: 120 })
  email?: string | null;

  @Choice(MARKETS, { optional: true })
  market?: string;

  @Choices(LANGUAGES, { optional: true })
  languages?: string[];

  @Text({ optional: true, min: 3, max: 3 })
  currency?: string;

  @Text({ optional: true, max: 60 })
  timeZone?: string;

  @Text({ optional: true, nullable: true, max: 12 })
  gs1CompanyPrefix?: string | null;

  @Text({ optional: true, max: 40 })
  codePattern?: string;

  @Choice(OVERHEAD_RULES, { optional: true })
  overheadRule?: string;

  @Money({ optional: true })
  overheadValue?: string;
}

export class LabourRateDto {
  @Text({ max: 60 })
  role: string;

  @Money({ description: 'Per hour, employer’s cost included' })
  ratePerHour: string;

  @Day()
  fromDay: string;
}

export class LabourRateView extends LabourRateDto {
  @Id()
  id: string;
}

export class VatRateDto {
  @Text({ max: 60 })
  productClass: string;

  @DecimalText({ places: 3, description: '0–100' })
  ratePercent: string;

  @Day()
  fromDay: string;
}

export class VatRateView extends VatRateDto {
  @Id()
  id: string;
}
