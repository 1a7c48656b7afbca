import { Controller, Get, Param, Query } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { AllowReaders } from '../access';
import { BalanceView, ProvenanceView } from './provenance.dto';
import { RecallSizesQuery, RecallSizesView } from './recall-sizes.dto';
import { DirectionQuery, MouldTraceQuery, TraceStartQuery, TraceView } from './trace.dto';
import { TracingService } from './tracing.service';

@ApiTags('tracing')
@Controller()
@AllowReaders()
export class TracingController {
  constructor(private readonly tracing: TracingService) {}

  /** Everything behind and ahead of a lot. Scope is reach: shares rank and explain, no more. */
  @Get('lots/:code/trace')
  @ApiOkResponse({ type: TraceView })
  trace(@Param('code') code: string, @Query() query: DirectionQuery): Promise<TraceView> {
    return this.tracing.traceLot(code, query.direction ?? 'both');
  }

  @Get('lots/:code/provenance')
  @ApiOkResponse({ type: ProvenanceView })
  provenance(@Param('code') code: string): Promise<ProvenanceView> {
    return this.tracing.provenance(code);
  }

  @Get('lots/:code/balance')
  @ApiOkResponse({ type: BalanceView })
  balance(@Param('code') code: string): Promise<BalanceView> {
    return this.tracing.balance(code);
  }

  @Get('moulds/:tag/trace')
  @ApiOkResponse({ type: TraceView })
  mould(@Param('tag') tag: string, @Query() query: MouldTraceQuery): Promise<TraceView> {
    return this.tracing.traceMould(tag, query.at, query.direction ?? 'both');
  }

  @Get('trace')
  @ApiOkResponse({ type: TraceView })
  from(@Query() query: TraceStartQuery): Promise<TraceView> {
    return this.tracing.traceFrom(query);
  }

  /** What a recall of each ingredient lot alone would touch: where mixing costs most. */
  @Get('trace/recall-sizes')
  @ApiOkResponse({ type: RecallSizesView })
  recallSizes(@Query() query: RecallSizesQuery): Promise<RecallSizesView> {
    return this.tracing.recallSizes(query);
  }
}
