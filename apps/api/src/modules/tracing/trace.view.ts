import type { Subgraph } from './subgraph';
import type { Direction } from './subgraph.queries';
import type { DetailRows } from './subgraph.rows';
import type { TraceView } from './trace.dto';
import { sharedOf } from './trace.shares';
import {
  batchViews,
  dispatchViews,
  flowViews,
  heelViews,
  moveViews,
  readingViews,
} from './traced-events.view';
import { lotViews } from './traced-lots.view';

export interface Question {
  readonly direction: Direction;
  readonly rootIds: readonly string[];
  readonly because: string | null;
  readonly askedAt: Date;
}

/** The subgraph in words and figures, with nothing looked up again. */
export const traceView = (subgraph: Subgraph<DetailRows>, question: Question): TraceView => {
  const { lots, graph } = subgraph;
  const rootIds = new Set(question.rootIds);
  const roots = lots.filter((row) => rootIds.has(row[0]));
  const shared = graph.ok ? sharedOf(graph.value, roots, question.direction) : undefined;
  return {
    direction: question.direction,
    askedAt: question.askedAt.toISOString(),
    roots: roots.map((row) => row[1]),
    because: question.because,
    sharesProblem: graph.ok ? null : graph.refusal.detail,
    lots: lotViews(subgraph, rootIds, shared),
    batches: batchViews(subgraph),
    flows: flowViews(subgraph),
    heelLinks: heelViews(subgraph),
    dispatches: dispatchViews(subgraph, shared),
    moves: moveViews(subgraph),
    failedReadings: readingViews(subgraph),
  };
};
