import {
  Choice,
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
import {
  EffectivenessView,
  ExcludedLotDto,
  LearnedView,
  ScopeChangeView,
  ScopeCustomerView,
  ScopeView,
  StillHereView,
} from './scope.dto';

export const MODES = ['real', 'rehearsal'] as const;
export const STATES = ['open', 'frozen', 'closed'] as const;

export class RecallStartDto {
  @Choice(STARTS, { description: 'What the case is opened from' })
  kind: (typeof STARTS)[number];

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

  @Nested(() => LearnedView, {
    description: 'What a frozen scope doesn’t hold and the record shows now; counted in below',
  })
  learned: LearnedView;

  @ListOf(() => StillHereView, {
    description: 'What of it is here now, where, and whether it is on hold: never as frozen',
  })
  here: StillHereView[];

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
