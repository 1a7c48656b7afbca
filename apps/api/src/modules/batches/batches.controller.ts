import { Body, Controller, Get, Param, ParseUUIDPipe, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { type Page, PageOf } from '../../platform/paging/page';
import { Allow, AllowReaders } from '../access';
import { BatchQuery, OpenBatchDto } from './batches.dto';
import { DrawDto, LossDto, MouldUseDto, ReadingDto, ReasonDto } from './bench.dto';
import { BatchesService } from './batches.service';
import { BatchSummaryView, BatchView } from './batches.view';
import { DrawView } from './draw.view';
import { LossView, MouldUseView, ReadingView } from './bench.view';
import { BenchService } from './bench.service';
import { DrawsService } from './draws.service';

@ApiTags('batches')
@Controller('batches')
export class BatchesController {
  constructor(
    private readonly batches: BatchesService,
    private readonly draws: DrawsService,
    private readonly bench: BenchService,
  ) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(BatchSummaryView) })
  list(@Query() query: BatchQuery): Promise<Page<BatchSummaryView>> {
    return this.batches.list(query);
  }

  @Get(':id')
  @AllowReaders()
  @ApiOkResponse({ type: BatchView })
  get(@Param('id', ParseUUIDPipe) id: string): Promise<BatchView> {
    return this.batches.get(id);
  }

  @Post()
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: BatchView })
  open(@Body() dto: OpenBatchDto): Promise<BatchView> {
    return this.batches.open(dto);
  }

  @Post(':id/draws')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: DrawView })
  draw(@Param('id', ParseUUIDPipe) id: string, @Body() dto: DrawDto): Promise<DrawView> {
    return this.draws.draw(id, dto);
  }

  @Post(':id/draws/:drawId/reversal')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: DrawView })
  reverse(
    @Param('id', ParseUUIDPipe) id: string,
    @Param('drawId', ParseUUIDPipe) drawId: string,
    @Body() dto: ReasonDto,
  ): Promise<DrawView> {
    return this.draws.reverse(id, drawId, dto.reason);
  }

  @Post(':id/readings')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: ReadingView })
  read(@Param('id', ParseUUIDPipe) id: string, @Body() dto: ReadingDto): Promise<ReadingView> {
    return this.bench.read(id, dto);
  }

  @Post(':id/mould-uses')
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: MouldUseView })
  useMould(
    @Param('id', ParseUUIDPipe) id: string,
    @Body() dto: MouldUseDto,
  ): Promise<MouldUseView> {
    return this.bench.useMould(id, dto);
  }

  @Post(':id/losses')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: LossView })
  lose(@Param('id', ParseUUIDPipe) id: string, @Body() dto: LossDto): Promise<LossView> {
    return this.bench.lose(id, dto);
  }
}
