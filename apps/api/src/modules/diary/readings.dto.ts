import { Choice, DecimalText, Flag, Id, Instant, Text, Texts } from '../../platform/dto';
import { PageQuery } from '../../platform/paging/page';

export const MEASURES = [
  ...['temp_c', 'humidity_percent', 'water_activity', 'ph', 'brix', 'mass_g'],
] as const;

const value = { places: 4, negative: true } as const;

export class TakeReadingDto {
  @Choice(MEASURES)
  measure: string;

  @DecimalText(value)
  value: string;

  @Id({ optional: true, description: 'Of a place: its own limits are applied' })
  placeId?: string;

  @Text({ optional: true, max: 40, description: 'Of a lot, by its code' })
  lotCode?: string;

  @Text({ optional: true, max: 80, description: 'What it was measured with' })
  instrument?: string;

  @Text({ optional: true, max: 500, description: 'What was done about a value out of its limits' })
  correctiveAction?: string;

  @Flag({
    optional: true,
    description: 'Out of limits in a place: put every lot that stands there on hold',
  })
  holdLots?: boolean;

  @Id({ optional: true, description: 'The reading that this one puts right' })
  reversesId?: string;
}

export class ReadingsQuery extends PageQuery {
  @Id({ optional: true })
  placeId?: string;

  @Text({ optional: true, max: 40 })
  lotCode?: string;

  @Choice(MEASURES, { optional: true })
  measure?: string;

  @Instant({ optional: true })
  from?: string;

  @Instant({ optional: true })
  to?: string;
}

export class TakenReadingView {
  @Id()
  id: string;

  @Choice(MEASURES)
  measure: string;

  @DecimalText(value)
  value: string;

  @DecimalText({ ...value, nullable: true })
  low: string | null;

  @DecimalText({ ...value, nullable: true })
  high: string | null;

  @Choice(['in', 'low', 'high', 'no_limit'])
  verdict: string;

  @Id({ nullable: true })
  placeId: string | null;

  @Text({ nullable: true })
  placeName: string | null;

  @Text({ nullable: true })
  lotCode: string | null;

  @Text({ nullable: true })
  batchCode: string | null;

  @Text({ nullable: true })
  step: string | null;

  @Text({ nullable: true })
  instrument: string | null;

  @Text({ nullable: true })
  correctiveAction: string | null;

  @Id({ nullable: true })
  reversesId: string | null;

  @Text({ nullable: true, description: 'Why it was marked as wrong; null when it stands' })
  withdrawnBecause: string | null;

  @Instant()
  at: string;

  @Text()
  userName: string;

  @Texts({ maxItems: 1000, description: 'Lots that this reading put on hold' })
  heldLots: string[];
}

/** A place whose readings are asked for every so many hours, and when the next one is due. */
export class ReadingDueView {
  @Id()
  placeId: string;

  @Text()
  placeName: string;

  @Text()
  tag: string;

  @Instant({ nullable: true, description: 'Null: none was ever taken' })
  lastAt: string | null;

  @Instant()
  dueAt: string;

  @Flag()
  overdue: boolean;
}
