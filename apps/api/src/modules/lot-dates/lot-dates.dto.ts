import { Choice, Day, Flag, ListOf, Text } from '../../platform/dto';

export class FreezerDto {
  @Day({ optional: true, description: 'Today when left out; never in the future' })
  on?: string;
}

export class DateReasonView {
  @Text()
  kind: string;

  @Day({ nullable: true })
  day: string | null;

  @Text({ nullable: true })
  lotCode: string | null;

  @Flag({ description: 'This line set the date' })
  rules: boolean;

  @Text({ max: 400 })
  text: string;
}

export class LotDatesView {
  @Text()
  lotCode: string;

  @Text()
  itemName: string;

  @Choice(['best_before', 'use_by', 'none'])
  kind: string;

  @Day({ nullable: true })
  day: string | null;

  @Day({ nullable: true })
  frozenOn: string | null;

  @Day({ nullable: true })
  thawedOn: string | null;

  @ListOf(() => DateReasonView)
  reasons: DateReasonView[];

  @Text({ max: 400 })
  caution: string;
}
