import {
  Choice,
  Choices,
  Id,
  Instant,
  JsonObject,
  ListOf,
  Money,
  Text,
  Whole,
} from '../../platform/dto';
import { LANGUAGES, MARKETS } from '../workshop';

export const LABEL_FORMS = ['box_label', 'direct_sale_label', 'legend_card'] as const;

export class AcceptedDto {
  @Text({ max: 60, description: 'Code of a finding that waits for a decision' })
  code: string;

  @Text({
    optional: true,
    nullable: true,
    max: 60,
    description: 'Its subject, as one allergen: a decision on milk says nothing of hazelnut',
  })
  subject?: string | null;

  @Text({ max: 500 })
  reason: string;
}

/** Labels to look at or to print. */
export class LabelsDto {
  @Choice(LABEL_FORMS)
  form: string;

  @Choice(MARKETS, { optional: true })
  market?: string;

  @Choices(LANGUAGES, { optional: true })
  languages?: string[];

  @Whole({ min: 1, max: 2000 })
  copies: number;

  @JsonObject({ optional: true, description: 'Label stock; left out, the workshop’s usual one' })
  stock?: Record<string, unknown>;

  @Money({ optional: true, description: 'Selling price to print, with its price per kilogram' })
  price?: string;

  @ListOf(() => AcceptedDto, { optional: true, max: 20 })
  accepted?: AcceptedDto[];
}

export class LabelRunView {
  @Id()
  id: string;

  @Text()
  lotCode: string;

  @Choice(LABEL_FORMS)
  form: string;

  @Choice(MARKETS)
  market: string;

  @Choices(LANGUAGES)
  languages: string[];

  @Whole()
  copies: number;

  @ListOf(() => AcceptedDto)
  accepted: AcceptedDto[];

  @Text()
  pdfSha256: string;

  @Instant()
  at: string;

  @Text()
  printedBy: string;
}
