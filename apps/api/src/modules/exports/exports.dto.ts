import { Day, Text } from '../../platform/dto';

export class EventsQuery {
  @Day({ optional: true, description: 'First day; the beginning of the record when left out' })
  from?: string;

  @Day({ optional: true, description: 'Last day, included; today when left out' })
  to?: string;

  @Text({
    optional: true,
    max: 60,
    description: 'Code of a recall case: only what touched the lots in its scope',
  })
  recall?: string;
}
