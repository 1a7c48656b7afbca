import { Text } from '../../platform/dto';
import { PaperQuery } from '../papers';

export class RecallPaperQuery extends PaperQuery {
  @Text({
    optional: true,
    max: 1000,
    description: 'In words for buyers; the case’s own when left out',
  })
  reason?: string;

  @Text({ optional: true, max: 1000, description: 'What buyers are asked to do' })
  advice?: string;
}
