import {
  Choice,
  Day,
  DecimalText,
  Flag,
  Grams,
  Id,
  Instant,
  ListOf,
  Quantity,
  Text,
  Texts,
} from '../../platform/dto';

export const DIRECTIONS = ['back', 'forward', 'both'] as const;

export class DirectionQuery {
  @Choice(DIRECTIONS, { optional: true, description: 'both when left out' })
  direction?: (typeof DIRECTIONS)[number];
}

export class MouldTraceQuery extends DirectionQuery {
  @Instant({ optional: true, description: 'When the damage was found; now when left out' })
  at?: string;
}

export const STARTS = [
  'lot',
  'mould',
  'supplier',
  'delivery',
  'specification',
  'recipe-version',
  'item',
  'mould-design',
  'tank',
  'place',
  'reading',
  'text',
] as const;

export class TraceStartQuery extends DirectionQuery {
  @Choice(STARTS, { description: 'What the trace starts from' })
  kind: (typeof STARTS)[number];

  @Id({ optional: true, description: 'Of the supplier, delivery, …' })
  id?: string;

  @Text({
    optional: true,
    max: 2000,
    description: 'Code of a lot, tag of a mould; for kind text anything scanned or typed',
  })
  text?: string;

  @Instant({
    optional: true,
    description: 'Begin of the window of a tank or a place; when the damage of a mould was found',
  })
  from?: string;

  @Instant({ optional: true, description: 'End of the window, for a tank or a place' })
  to?: string;
}

const SIDES = ['root', 'behind', 'ahead'] as const;

export class TracedLotView {
  @Text()
  code: string;

  @Choice(SIDES)
  side: (typeof SIDES)[number];

  @Text()
  itemName: string;

  @Text()
  itemKind: string;

  @Text()
  unit: string;

  @Text({ nullable: true, description: 'Code of the batch; null when it was received' })
  madeByBatch: string | null;

  @Quantity()
  madeQuantity: string;

  @Grams()
  madeMassGrams: string;

  @Quantity()
  onHandQuantity: string;

  @Grams()
  onHandMassGrams: string;

  @Day()
  madeOn: string;

  @Day({ nullable: true })
  bestBefore: string | null;

  @Day({ nullable: true })
  useBy: string | null;

  @Text({ nullable: true })
  place: string | null;

  @Flag()
  held: boolean;

  @Flag()
  refused: boolean;

  @Text({ nullable: true })
  supplier: string | null;

  @Text({ nullable: true })
  supplierLotCode: string | null;

  @Grams({
    nullable: true,
    description:
      'Behind: grams of this lot in the lots asked about. Ahead: grams of them in this lot, well ' +
      'mixed. Null when the record has a fault that hides the shares. Never a reason to leave a lot out.',
  })
  sharedMassGrams: string | null;

  @DecimalText({ nullable: true, places: 9, description: 'The same as a part of the whole, 0–1' })
  sharedRatio: string | null;
}

export class TracedBatchView {
  @Text()
  code: string;

  @Text()
  kind: string;

  @Text()
  state: string;

  @Instant()
  openedAt: string;

  @Instant({ nullable: true })
  endedAt: string | null;

  @Text({ nullable: true })
  operator: string | null;

  @Text({ nullable: true })
  tank: string | null;

  @Text({ nullable: true })
  place: string | null;
}

export class TracedFlowView {
  @Text()
  batch: string;

  @Text()
  lot: string;

  @Quantity()
  quantity: string;

  @Grams()
  massGrams: string;
}

export class TracedDispatchView {
  @Text()
  lot: string;

  @Text()
  dispatch: string;

  @Id({ nullable: true })
  customerId: string | null;

  @Text({ nullable: true, description: 'Null: over the counter' })
  customer: string | null;

  @Day()
  sentOn: string;

  @Quantity()
  quantity: string;

  @Grams()
  massGrams: string;

  @Quantity({ description: 'Of it, what had come back when the question was asked' })
  returnedQuantity: string;

  @Grams()
  returnedMassGrams: string;

  @Grams({ nullable: true, description: 'Grams of the lots asked about in it, well mixed' })
  sharedMassGrams: string | null;
}

export class TracedMoveView {
  @Text()
  lot: string;

  @Choice(['wasted', 'counted', 'sampled', 'returned'])
  kind: string;

  @Quantity()
  quantity: string;

  @Grams()
  massGrams: string;
}

export class TracedReadingView {
  @Id({ description: 'A trace can start from it' })
  id: string;

  @Text({ nullable: true })
  lot: string | null;

  @Text({ nullable: true })
  batch: string | null;

  @Text()
  measure: string;

  @DecimalText({ places: 4 })
  value: string;

  @Text({ description: 'low or high: outside its limits' })
  verdict: string;

  @Instant()
  at: string;

  @Text({ nullable: true })
  person: string | null;

  @Text({ nullable: true })
  correctiveAction: string | null;
}

export class HeelLinkView {
  @Text()
  batch: string;

  @Text({ description: 'The tank’s lot before: linked because the tank was not recorded clean' })
  lot: string;
}

export class TraceView {
  @Choice(DIRECTIONS)
  direction: (typeof DIRECTIONS)[number];

  @Instant({ description: 'When the question was asked' })
  askedAt: string;

  @Texts({ description: 'Codes of the lots asked about' })
  roots: string[];

  @Text({ nullable: true, description: 'How the lots asked about were found' })
  because: string | null;

  @Text({ nullable: true, description: 'Set when a fault of the record hides the shares' })
  sharesProblem: string | null;

  @ListOf(() => TracedLotView)
  lots: TracedLotView[];

  @ListOf(() => TracedBatchView)
  batches: TracedBatchView[];

  @ListOf(() => TracedFlowView, { description: 'Draws between the lots and batches listed' })
  flows: TracedFlowView[];

  @ListOf(() => HeelLinkView)
  heelLinks: HeelLinkView[];

  @ListOf(() => TracedDispatchView)
  dispatches: TracedDispatchView[];

  @ListOf(() => TracedMoveView)
  moves: TracedMoveView[];

  @ListOf(() => TracedReadingView)
  failedReadings: TracedReadingView[];
}
