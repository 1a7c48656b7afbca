import {
  Choice,
  DecimalText,
  Flag,
  Grams,
  Id,
  Instant,
  ListOf,
  Quantity,
  Text,
  Whole,
} from '../../platform/dto';
import { ExpectedLossDto, RecipeStepDto } from './recipes.dto';

export class RecipeLineView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Text()
  itemKind: string;

  @Text()
  unit: string;

  @Quantity()
  quantity: string;

  @Text()
  role: string;

  @Text({ nullable: true })
  note: string | null;
}

export class RecipeVersionView {
  @Id()
  id: string;

  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Text()
  itemKind: string;

  @Whole({ description: 'Number of the version of this recipe' })
  number: number;

  @Flag({ description: 'Used by a batch: it never changes again' })
  frozen: boolean;

  @Instant({ nullable: true })
  frozenAt: string | null;

  @ListOf(() => RecipeLineView)
  lines: RecipeLineView[];

  @ListOf(() => ExpectedLossDto)
  expectedLosses: ExpectedLossDto[];

  @ListOf(() => RecipeStepDto)
  steps: RecipeStepDto[];

  @Grams({ nullable: true })
  yieldGrams: string | null;

  @Whole({ nullable: true })
  yieldPieces: number | null;

  @Whole({ nullable: true })
  shelfLifeDays: number | null;

  @Text({ nullable: true })
  shelfLifeBasis: string | null;

  @Text({ nullable: true })
  shelfLifeDocument: string | null;

  @Text()
  dateKind: string;

  @Whole({ nullable: true })
  lifeAfterThawDays: number | null;

  @DecimalText({ nullable: true })
  labourMinutes: string | null;

  @Text({ nullable: true })
  labourRole: string | null;

  @Id({ nullable: true })
  mouldDesignId: string | null;

  @Text({ nullable: true })
  ganacheUse: string | null;

  @Text({ nullable: true })
  note: string | null;

  @Whole()
  version: number;
}

export class LineChangeView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Text()
  role: string;

  @Choice(['added', 'removed', 'changed', 'same'])
  kind: string;

  @Quantity()
  beforeQuantity: string;

  @Quantity()
  afterQuantity: string;

  @DecimalText({ nullable: true, description: 'Of all that is weighed in' })
  beforePercent: string | null;

  @DecimalText({ nullable: true })
  afterPercent: string | null;
}

export class FieldChangeView {
  @Text()
  field: string;

  @Text({ nullable: true, max: 4000 })
  before: string | null;

  @Text({ nullable: true, max: 4000 })
  after: string | null;
}

export class ComparisonView {
  @Whole()
  beforeNumber: number;

  @Whole()
  afterNumber: number;

  @ListOf(() => LineChangeView)
  lines: LineChangeView[];

  @ListOf(() => FieldChangeView)
  fields: FieldChangeView[];
}
