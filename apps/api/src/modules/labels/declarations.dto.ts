import { Choice, DecimalText, Flag, JsonObject, ListOf, Text, Texts } from '../../platform/dto';
import { LANGUAGES, MARKETS } from '../workshop';

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

  @Text({ nullable: true, description: 'What is to be decided, as one allergen or one day' })
  subject: string | null;

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
