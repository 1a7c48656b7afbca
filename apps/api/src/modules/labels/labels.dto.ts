import {
  Choice,
  Choices,
  DecimalText,
  Flag,
  Id,
  Instant,
  JsonObject,
  ListOf,
  Money,
  Text,
  Texts,
  Whole,
} from '../../platform/dto';
import { LANGUAGES, MARKETS } from '../workshop';

export const LABEL_FORMS = ['box_label', 'direct_sale_label', 'legend_card'] as const;
export type LabelForm = (typeof LABEL_FORMS)[number];

export class DeclarationQuery {
  @Choice(MARKETS, { optional: true })
  market?: string;

  @Text({ optional: true, max: 20, description: 'Languages with commas between, as en,fr' })
  languages?: string;
}

export class FindingView {
  @Text()
  code: string;

  @Choice(['refusal', 'decision', 'warning', 'note'], {
    description: 'A refusal keeps the label back; a decision waits for a named person',
  })
  severity: string;

  @Text()
  detail: string;

  @JsonObject()
  facts: Record<string, unknown>;
}

export class RunOfTextView {
  @Text()
  text: string;

  @Choice(['none', 'allergen', 'strong'])
  emphasis: string;
}

export class IngredientListView {
  @Choice(LANGUAGES)
  language: string;

  @ListOf(() => RunOfTextView)
  runs: RunOfTextView[];

  @Text({ description: 'The same list as the recipe is designed; empty without a recipe' })
  asDesigned: string;
}

export class ContactView {
  @Text()
  allergen: string;

  @Choice(['above', 'below', 'unknown'])
  verdict: string;

  @DecimalText({ nullable: true, description: 'Protein of the source, mg in a kilogram' })
  proteinMgPerKg: string | null;

  @DecimalText({ nullable: true, description: 'At which one sitting reaches the reference dose' })
  actionLevelMgPerKg: string | null;

  @Texts({ description: 'Lots and lines that it may come from' })
  sources: string[];
}

export class DeclarationView {
  @Text()
  lotCode: string;

  @Text()
  itemName: string;

  @Choice(MARKETS)
  market: string;

  @Flag({ description: 'Nothing keeps the label back' })
  printable: boolean;

  @ListOf(() => IngredientListView)
  lists: IngredientListView[];

  @Texts({ description: 'Allergens that are declared' })
  allergens: string[];

  @ListOf(() => ContactView)
  contacts: ContactView[];

  @DecimalText({ description: 'Total SO2 in the product' })
  sulphiteMgPerKg: string;

  @ListOf(() => FindingView)
  findings: FindingView[];

  @JsonObject({ nullable: true, description: 'All that is printed; empty while it is kept back' })
  content: Record<string, unknown> | null;
}

export class AcceptedDto {
  @Text({ max: 60, description: 'Code of a finding that waits for a decision' })
  code: string;

  @Text({ max: 500 })
  reason: string;
}

export class PrintLabelsDto {
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

export class DecideContactDto {
  @Choice(MARKETS, { optional: true })
  market?: string;

  @Text({ max: 40 })
  allergen: string;

  @Choice(['state', 'leave_out'])
  decision: string;

  @Text({ max: 500 })
  reason: string;
}

export class ContactDecisionView {
  @Id()
  id: string;

  @Choice(MARKETS)
  market: string;

  @Text()
  allergen: string;

  @Choice(['state', 'leave_out'])
  decision: string;

  @Text()
  reason: string;

  @JsonObject({ description: 'The numbers that stood then' })
  assessment: Record<string, unknown>;

  @Text()
  decidedBy: string;

  @Instant()
  at: string;
}
