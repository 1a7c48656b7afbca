import { IntersectionType } from '@nestjs/swagger';
import { Choice } from '../../platform/dto';
import { DIRECTIONS, TraceStartQuery } from '../tracing';
import { PaperQuery } from './papers.dto';

/** A trace of one thing, on paper. */
export class TracePaperQuery extends PaperQuery {
  @Choice(DIRECTIONS, { optional: true, description: 'both when left out' })
  direction?: (typeof DIRECTIONS)[number];
}

/** A trace from anything that a trace can start from, on paper. */
export class TraceStartPaperQuery extends IntersectionType(TraceStartQuery, PaperQuery) {}
