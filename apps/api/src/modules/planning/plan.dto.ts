import { READER_LANGUAGES, type ReaderLanguage } from '../../domain/words/in-language';
import {
  Choice,
  Day,
  DecimalText,
  Id,
  Instant,
  ListOf,
  Money,
  Quantity,
  Text,
  Texts,
  Whole,
} from '../../platform/dto';

export class PlannedUseView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Quantity()
  quantity: string;

  @Choice(['lot', 'begun', 'planned', 'bought'])
  source: string;

  @Text({ nullable: true, description: 'Code of the lot or batch, or name of the planned batch' })
  from: string | null;
}

export class PlannedMinutesView {
  @Text()
  resource: string;

  @DecimalText({ places: 1 })
  minutes: string;
}

export class PlannedBatchView {
  @Text({ description: 'Name of the batch inside its plan' })
  key: string;

  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Choice(['cook', 'cast', 'pack'])
  step: string;

  @Day()
  day: string;

  @Day({ description: 'Start later and something is late' })
  latestDay: string;

  @Day()
  readyDay: string;

  @Quantity({ description: 'Grams, good pieces or boxes' })
  quantity: string;

  @Whole({ nullable: true })
  trays: number | null;

  @Text({ nullable: true })
  mouldDesign: string | null;

  @ListOf(() => PlannedMinutesView)
  minutes: PlannedMinutesView[];

  @ListOf(() => PlannedUseView)
  uses: PlannedUseView[];

  @Texts({ description: 'Orders, batches or the counter that it is made for' })
  for: string[];
}

export class ObstacleView {
  @Choice(['moulds', 'minutes', 'lead_time', 'life', 'working_days', 'not_tried'], {
    description: '`not_tried`: so much more is asked than fits that planning stopped at its limit',
  })
  kind: string;

  @Text()
  subject: string;
}

export class ShortfallView {
  @Text({ description: 'The order line, batch or counter day' })
  demand: string;

  @Text()
  for: string;

  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Day()
  dueDay: string;

  @Quantity()
  missing: string;

  @Money({ description: 'Net sales that go with it' })
  lostValue: string;

  @ListOf(() => ObstacleView)
  because: ObstacleView[];
}

export class ShoppingLineView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Quantity()
  needed: string;

  @Whole({ nullable: true })
  packs: number | null;

  @Quantity()
  ordered: string;

  @Money({ nullable: true, description: 'Null: no price known' })
  cost: string | null;

  @Day()
  neededOn: string;

  @Day()
  orderBy: string;
}

export class SupplierOrderView {
  @Text({ nullable: true, description: 'Null: nobody is known to sell these' })
  supplier: string | null;

  @Day()
  orderBy: string;

  @Money()
  cost: string;

  @Money({ description: 'Money under the supplier’s minimum order' })
  belowMinimum: string;

  @ListOf(() => ShoppingLineView)
  lines: ShoppingLineView[];
}

export class PlanContent {
  @Day()
  today: string;

  @ListOf(() => PlannedBatchView)
  batches: PlannedBatchView[];

  @ListOf(() => ShortfallView)
  shortfalls: ShortfallView[];

  @ListOf(() => SupplierOrderView)
  shopping: SupplierOrderView[];
}

export class StartedView {
  @Text()
  key: string;

  @Id()
  batchId: string;

  @Text()
  batchCode: string;
}

export class PlanView extends PlanContent {
  @Id()
  id: string;

  @Instant()
  madeAt: string;

  @ListOf(() => StartedView, { description: 'Batches that were opened from it' })
  started: StartedView[];
}

export class CalendarQuery {
  @Choice(READER_LANGUAGES, { optional: true, description: 'The reader’s when left out' })
  language?: ReaderLanguage;
}

export class WayOutView {
  @Choice(['more_moulds', 'longer_days', 'open_closed_day', 'deliver_later', 'send_fewer'])
  kind: string;

  @Text({ nullable: true, description: 'The design, resource, day or order concerned' })
  subject: string | null;

  @Whole({ nullable: true, description: 'Trays, minutes a day, or days' })
  amount: number | null;

  @Money({ description: 'What it takes, lost sales included' })
  cost: string;

  @Quantity({ description: 'Still missing with it' })
  stillMissing: string;
}

export class StartBatchesDto {
  @Texts({ max: 120, maxItems: 100, description: 'Names of batches in the plan' })
  keys: string[];

  @Whole({ optional: true, min: 1, max: 720, description: 'Hours that lots are kept for them' })
  reservedHours?: number;
}

export class ReservationView {
  @Id()
  id: string;

  @Text()
  lotCode: string;

  @Text()
  itemName: string;

  @Text()
  batchCode: string;

  @Quantity()
  quantity: string;

  @Instant()
  expiresAt: string;

  @Choice(['active', 'expired', 'released', 'batch_closed'])
  state: string;
}

export class StartedBatchView extends StartedView {
  @ListOf(() => ReservationView)
  reservations: ReservationView[];

  @ListOf(() => PlannedUseView, { description: 'Not there yet, so nothing is kept of it' })
  notReserved: PlannedUseView[];
}

export class StartedBatchesView {
  @ListOf(() => StartedBatchView)
  batches: StartedBatchView[];
}
