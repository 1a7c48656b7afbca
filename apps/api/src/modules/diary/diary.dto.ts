import { Choice, Day, Flag, Id, Instant, ListOf, Text } from '../../platform/dto';
import { PaperQuery } from '../papers';

export class DiaryQuery {
  @Day({ description: 'First day' })
  from: string;

  @Day({ description: 'Last day; 92 days at most' })
  to: string;
}

export class DiaryPdfQuery extends PaperQuery {
  @Day({ description: 'First day' })
  from: string;

  @Day({ description: 'Last day; 92 days at most' })
  to: string;
}

export const DIARY_KINDS = [
  ...(['reading', 'cleaning', 'mould', 'hold', 'release', 'tank', 'work'] as const),
] as const;

export class DiaryEntryView {
  @Instant()
  at: string;

  @Text({ description: 'HH:MM in the workshop’s time zone' })
  time: string;

  @Choice(DIARY_KINDS)
  kind: (typeof DIARY_KINDS)[number];

  @Text({ max: 400 })
  subject: string;

  @Text({ max: 2000, empty: true })
  what: string;

  @Flag({ description: 'Out of limits, or something is wrong' })
  attention: boolean;

  @Text()
  userName: string;
}

export class DiaryDayView {
  @Day()
  day: string;

  @ListOf(() => DiaryEntryView)
  entries: DiaryEntryView[];
}

export class DiaryView {
  @Day()
  from: string;

  @Day()
  to: string;

  @ListOf(() => DiaryDayView)
  days: DiaryDayView[];
}

export class CleaningDto {
  @Text({ max: 200, description: 'What was done' })
  what: string;

  @Id({ optional: true })
  placeId?: string;

  @Id({ optional: true })
  tankId?: string;

  @Text({ optional: true, max: 500 })
  note?: string;
}

export class CleaningView {
  @Id()
  id: string;

  @Text()
  what: string;

  @Text({ nullable: true })
  placeName: string | null;

  @Text({ nullable: true })
  tankName: string | null;

  @Text({ nullable: true })
  note: string | null;

  @Instant()
  at: string;

  @Text()
  userName: string;
}
