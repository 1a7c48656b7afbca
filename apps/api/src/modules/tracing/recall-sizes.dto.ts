import { Day, Id, Instant, ListOf, Quantity, Text, Whole } from '../../platform/dto';

export class RecallSizesQuery {
  @Whole({
    optional: true,
    fromQuery: true,
    min: 1,
    max: 3650,
    description: 'Lots received in so many days, and all that are still on hand; 120 when left out',
  })
  days?: number;

  @Id({ optional: true, description: 'Of one ingredient only' })
  item?: string;
}

export class RecallSizeView {
  @Text()
  lot: string;

  @Text()
  itemName: string;

  @Text({ nullable: true })
  supplier: string | null;

  @Text({ nullable: true })
  supplierLotCode: string | null;

  @Day({ nullable: true })
  receivedOn: string | null;

  @Whole({ description: 'Lots that hold, or may hold, something of it' })
  lots: number;

  @Quantity({ description: 'Boxes that went out and have not come back' })
  boxes: string;

  @Quantity({ description: 'Loose pieces, counted alike' })
  pieces: string;

  @Quantity({ description: 'Of both, those of buyers nobody can write to' })
  overTheCounter: string;

  @Whole({ description: 'Customers to be told' })
  customers: number;

  @Quantity({ description: 'Boxes still here' })
  boxesHere: string;
}

export class RecallSizesView {
  @Instant()
  askedAt: string;

  @Text({ nullable: true, description: 'Set when lots were left out because there are too many' })
  leftOut: string | null;

  @ListOf(() => RecallSizeView, { description: 'What a recall of each alone would touch' })
  sizes: RecallSizeView[];
}
