import {
  Choice,
  Day,
  Flag,
  Grams,
  Id,
  Instant,
  ListOf,
  Quantity,
  Text,
  Texts,
} from '../../platform/dto';

export class ExcludedLotDto {
  @Text({ max: 60 })
  lot: string;

  @Text({ max: 500, description: 'Why a person took it out: kept in the case' })
  reason: string;
}

export class ScopeLotView {
  @Text()
  code: string;

  @Text()
  itemName: string;

  @Text()
  itemKind: string;

  @Choice(['g', 'pc'])
  unit: 'g' | 'pc';

  @Flag({ description: 'One of the lots that the case was opened from' })
  root: boolean;

  @Text({
    nullable: true,
    description: 'Part that came from them, well mixed; ranks, never excludes',
  })
  sharedRatio: string | null;

  @Quantity()
  madeQuantity: string;

  @Day({ nullable: true })
  bestBefore: string | null;

  @Day({ nullable: true })
  useBy: string | null;

  @Quantity()
  onHandQuantity: string;

  @Text({ nullable: true })
  place: string | null;

  @Flag()
  held: boolean;

  @Quantity({ description: 'Sent to customers' })
  dispatchedQuantity: string;

  @Quantity({ description: 'Sold over the counter' })
  counterQuantity: string;
}

export class ScopeSaleView {
  @Text()
  dispatch: string;

  @Day()
  sentOn: string;

  @Id({ nullable: true })
  customerId: string | null;

  @Text()
  lot: string;

  @Text()
  itemName: string;

  @Choice(['g', 'pc'])
  unit: 'g' | 'pc';

  @Text({ description: 'box, piece, …' })
  itemKind: string;

  @Quantity()
  quantity: string;

  @Grams()
  massGrams: string;

  @Quantity({ description: 'Of it, what had come back when the record was read' })
  returnedQuantity: string;

  @Grams()
  returnedMassGrams: string;
}

export class ScopeEndView {
  @Text()
  lot: string;

  @Text({ description: 'wasted, counted, sampled, returned, or drawn into an open batch' })
  what: string;

  @Quantity()
  quantity: string;

  @Choice(['g', 'pc'])
  unit: 'g' | 'pc';
}

export class ScopeCustomerView {
  @Id()
  id: string;

  @Text()
  name: string;

  @Texts()
  addressLines: string[];

  @Text({ nullable: true })
  phone: string | null;

  @Text({ nullable: true })
  email: string | null;

  @Quantity({ description: 'Boxes sent, less those that had come back before' })
  boxes: string;

  @Quantity({ description: 'Loose pieces, counted alike' })
  pieces: string;

  @Grams()
  distributedGrams: string;

  @Grams()
  recoveredGrams: string;

  @Flag()
  told: boolean;

  @Flag({ description: 'Only what was learned after the scope was frozen leads to this customer' })
  learnedLater: boolean;
}

export class ScopeView {
  @Instant({ description: 'When the record was read' })
  askedAt: string;

  @Text({ nullable: true })
  sharesProblem: string | null;

  @ListOf(() => ScopeLotView)
  lots: ScopeLotView[];

  @ListOf(() => ScopeSaleView)
  sales: ScopeSaleView[];

  @ListOf(() => ScopeEndView)
  ends: ScopeEndView[];

  @ListOf(() => ExcludedLotDto)
  excluded: ExcludedLotDto[];
}

export class StillHereView {
  @Text()
  lot: string;

  @Text()
  itemName: string;

  @Choice(['g', 'pc'])
  unit: 'g' | 'pc';

  @Quantity()
  quantity: string;

  @Text({ nullable: true })
  place: string | null;

  @Flag()
  held: boolean;

  @Flag({ description: 'Not in the frozen scope: the record reaches it now' })
  learnedLater: boolean;
}

export class LearnedView {
  @ListOf(() => ScopeLotView, { description: 'Lots that the record reaches now' })
  lots: ScopeLotView[];

  @ListOf(() => ScopeSaleView, { description: 'Sales that the record shows now' })
  sales: ScopeSaleView[];
}

export class ChangedFieldView {
  @Choice(['onHand', 'dispatched', 'counter'])
  field: 'onHand' | 'dispatched' | 'counter';

  @Quantity()
  was: string;

  @Quantity()
  is: string;
}

export class ScopeChangeView {
  @Text()
  lot: string;

  @Choice(['now-in-scope', 'no-longer-in-scope', 'quantity'])
  change: 'now-in-scope' | 'no-longer-in-scope' | 'quantity';

  @ListOf(() => ChangedFieldView, { description: 'Quantities then and now' })
  fields: ChangedFieldView[];
}

export class EffectivenessView {
  @Grams()
  distributedGrams: string;

  @Grams()
  recoveredGrams: string;

  @Grams()
  outstandingGrams: string;

  @Text({ nullable: true, description: 'Recovered ÷ distributed' })
  recoveredPercent: string | null;

  @Texts({ description: 'More came back than went out: to be looked at' })
  overRecovered: string[];

  @Texts()
  notHeardFrom: string[];
}
