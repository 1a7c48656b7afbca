import { DecimalText, Flag, Id, ListOf, Money, Quantity, Text } from '../../platform/dto';
import { CautionView } from '../recipes';

export class SubstitutionDto {
  @Id({ description: 'The recipe’s component that is to be replaced' })
  itemId: string;

  @Text({ max: 40, description: 'The lot that would be taken instead' })
  lotCode: string;
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
  @Text()
  originalName: string;

  @Text()
  substituteName: string;

  @Text()
  lotCode: string;

  @Quantity({ description: 'What the plan takes of it' })
  plannedQuantity: string;

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
