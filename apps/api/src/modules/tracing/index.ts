export { TracingModule } from './tracing.module';
export { TracingService } from './tracing.service';
export { loadDetailedSubgraph, loadSubgraph, type Subgraph } from './subgraph';
export { type Direction, subgraphQuery } from './subgraph.queries';
export { SUBGRAPH_DETAILS } from './subgraph-details.queries';
export type { DetailRows, LotRow, SubgraphRows } from './subgraph.rows';
export { STARTS, TracedLotView, TraceStartQuery, TraceView } from './trace.dto';
export { traceView } from './trace.view';
export type { Roots } from './roots';
