import {
  Choice,
  Day,
  Flag,
  Grams,
  Id,
  Instant,
  JsonObject,
  ListOf,
  Nested,
  Quantity,
  Text,
  Texts,
  Whole,
} from '../../platform/dto';
import { PageQuery } from '../../platform/paging/page';
import { STARTS } from '../tracing';

export const MODES = ['real', 'rehearsal'] as const;
export const STATES = ['open', 'frozen', 'closed'] as const;
export const RECALL_STARTS = ['lot', 'mould', ...STARTS] as const;

export class RecallStartDto {
  @Choice(RECALL_STARTS, { description: 'What the case is opened from' })
  kind: (typeof RECALL_STARTS)[number];

  @Id({ optional: true })
  id?: string;

  @Text({
    optional: true,
    max: 2000,
    description: 'Code of a lot, tag of a mould, any scanned text',
  })
  text?: string;

  @Instant({ optional: true, description: 'Window of a tank or a place; damage of a mould' })
  from?: string;

  @Instant({ optional: true })
  to?: string;
}

export class OpenRecallDto {
  @Choice(MODES, { description: 'A rehearsal holds nothing and is kept on record' })
  mode: (typeof MODES)[number];

  @Text({ max: 1000 })
  reason: string;

  @ListOf(() => RecallStartDto, { min: 1, max: 50 })
  starts: RecallStartDto[];
}

export class ExcludedLotDto {
  @Text({ max: 60 })
  lot: string;

  @Text({ max: 500, description: 'Why a person took it out: kept in the case' })
  reason: string;
}

export class FreezeDto {
  @ListOf(() => ExcludedLotDto, { max: 500, optional: true })
  excluded?: ExcludedLotDto[];
}

export const NOTE_KINDS = ['customer_told', 'note', 'list_printed', 'notice_printed'] as const;

export class RecallNoteDto {
  @Choice(NOTE_KINDS)
  kind: (typeof NOTE_KINDS)[number];

  @Text({ max: 2000, optional: true })
  text?: string;

  @Id({ optional: true, description: 'The customer that was told' })
  customerId?: string;
}

export class RecoveredDto {
  @Text({ max: 60 })
  lot: string;

  @Id({ optional: true, nullable: true, description: 'Left out or null: over the counter' })
  customerId?: string | null;

  @Quantity()
  quantity: string;

  @Choice(['returned', 'destroyed'], {
    description: 'Returned goods are booked back and stay on hold; destroyed ones never came back',
  })
  outcome: 'returned' | 'destroyed';
}

export class RecoveriesDto {
  @ListOf(() => RecoveredDto, { min: 1, max: 200 })
  lines: RecoveredDto[];
}

export class CloseRecallDto {
  @Text({ max: 4000, description: 'What was found and what is changed because of it' })
  conclusion: string;
}

export class RecallQuery extends PageQuery {
  @Choice(STATES, { optional: true })
  state?: (typeof STATES)[number];
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

  @Quantity()
  quantity: string;

  @Grams()
  massGrams: string;
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

  @Grams()
  distributedGrams: string;

  @Grams()
  recoveredGrams: string;

  @Flag()
  told: boolean;
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

export class ScopeChangeView {
  @Text()
  lot: string;

  @Choice(['now-in-scope', 'no-longer-in-scope', 'quantity'])
  change: string;

  @Text({ nullable: true, description: 'Quantities then and now' })
  detail: string | null;
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

export class RecallActionView {
  @Text()
  kind: string;

  @Instant()
  at: string;

  @Text()
  person: string;

  @JsonObject()
  detail: Record<string, unknown>;

  @Whole({ description: 'Seconds since the case was opened' })
  afterSeconds: number;
}

export class RecallHeadView {
  @Text()
  code: string;

  @Choice(MODES)
  mode: string;

  @Choice(STATES)
  state: string;

  @Text()
  reason: string;

  @Texts({ description: 'What it was opened from, in words' })
  because: string[];

  @Instant()
  openedAt: string;

  @Instant({ nullable: true })
  frozenAt: string | null;

  @Instant({ nullable: true })
  closedAt: string | null;

  @Whole()
  version: number;
}

export class RecallView extends RecallHeadView {
  @Text({ description: 'What this paper or page can’t decide' })
  caution: string;

  @Nested(() => ScopeView, { description: 'As frozen, or as it is now' })
  scope: ScopeView;

  @ListOf(() => ScopeChangeView, {
    description: 'Learned since it was frozen, or since it was opened',
  })
  changes: ScopeChangeView[];

  @ListOf(() => ScopeCustomerView)
  customers: ScopeCustomerView[];

  @Texts({ description: 'Lots in scope with goods on hand and no hold' })
  notHeld: string[];

  @Nested(() => EffectivenessView)
  effectiveness: EffectivenessView;

  @ListOf(() => RecallActionView)
  actions: RecallActionView[];

  @JsonObject({ nullable: true })
  closeReport: Record<string, unknown> | null;
}
