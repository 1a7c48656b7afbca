import { Choice } from '../../platform/dto';
import { DIRECTIONS, TraceStartQuery } from '../tracing';
import { PaperQuery } from './papers.dto';

/** A trace of one thing, on paper. */
export class TracePaperQuery extends PaperQuery {
  @Choice(DIRECTIONS, { optional: true, description: 'both when left out' })
  direction?: (typeof DIRECTIONS)[number];
}

/** A trace from anything that a trace can start from, on paper. */
export class TraceStartPaperQuery extends TraceStartQuery {
  @Choice(['A4', 'LETTER'], { optional: true, description: 'A4 when left out' })
  page?: 'A4' | 'LETTER';

  @Choice(['en', 'fr'], { optional: true, description: 'The workshop’s first when left out' })
  language?: 'en' | 'fr';
}
