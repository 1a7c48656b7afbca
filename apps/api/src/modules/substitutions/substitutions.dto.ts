import { DecimalText, Flag, Id, ListOf, Money, Quantity, Text } from '../../platform/dto';
import { CautionView } from '../recipes';

export class SubstitutionDto {
  @Id({
    optional: true,
    nullable: true,
    description: 'The recipe’s component that is to be replaced; left out for an addition',
  })
  itemId?: string | null;

  @Text({ max: 40, description: 'The lot that would be taken instead' })
  lotCode: string;

  @Quantity({
    optional: true,
    description: 'Of an addition, in the lot’s unit; figures need it, allergens don’t',
  })
  quantity?: string;
}

export class AllergenChangeView {
  @Text()
  allergen: string;

  @Text()
  before: string;

  @Text()
  after: string;

  @Flag({ description: 'The product’s label must change' })
  isWorse: boolean;
}

export class FigureChangeView {
  @Text()
  figure: string;

  @DecimalText({ nullable: true, places: 2, description: 'Per cent; water activity as a fraction' })
  before: string | null;

  @DecimalText({ nullable: true, places: 2 })
  after: string | null;
}

export class SubstitutionView {
  @Text({ nullable: true, description: 'null: it comes in addition' })
  originalName: string | null;

  @Text()
  substituteName: string;

  @Text()
  lotCode: string;

  @Quantity({ nullable: true, description: 'What the plan takes of it, or what is to be added' })
  plannedQuantity: string | null;

  @Quantity()
  onHandQuantity: string;

  @Text({ nullable: true, max: 400, description: 'Why the lot can’t be used; null when it can' })
  notUsable: string | null;

  @ListOf(() => AllergenChangeView)
  allergens: AllergenChangeView[];

  @ListOf(() => FigureChangeView)
  figures: FigureChangeView[];

  @Money({ nullable: true, description: 'For the planned quantity, at the item’s own price' })
  originalCost: string | null;

  @Money({ nullable: true, description: 'For the planned quantity, at the cost of this lot' })
  substituteCost: string | null;

  @ListOf(() => CautionView, { description: 'Of the product with the substitute in it' })
  cautions: CautionView[];
}
