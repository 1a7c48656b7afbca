import { Body, Controller, Get, HttpCode, Param, ParseUUIDPipe, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { type Page, PageOf } from '../../platform/paging/page';
import { Allow, AllowReaders } from '../access';
import { AbandonService } from './abandon.service';
import {
  AbandonBatchDto,
  BatchQuery,
  CorrectionDto,
  DrawDto,
  FinishBatchDto,
  LossDto,
  MouldUseDto,
  OpenBatchDto,
  ReadingDto,
  ReasonDto,
} from './batches.dto';
import { BatchesService } from './batches.service';
import {
  BatchSummaryView,
  BatchView,
  DrawView,
  LossView,
  MouldUseView,
  ReadingView,
} from './batches.view';
import { BenchService } from './bench.service';
import { CorrectionsService } from './corrections.service';
import { DrawsService } from './draws.service';
import { FinishService } from './finish.service';
import { SplitService } from './split.service';
import { SplitDto, SplitQuery, SplitView } from './split.view';

@ApiTags('batches')
@Controller('batches')
export class BatchesController {
  constructor(
    private readonly batches: BatchesService,
    private readonly draws: DrawsService,
    private readonly bench: BenchService,
    private readonly finishing: FinishService,
    private readonly abandoning: AbandonService,
    private readonly corrections: CorrectionsService,
    private readonly splitting: SplitService,
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

  @Post(':id/finish')
  @Allow('maker', 'seller')
  @Books()
  @HttpCode(200)
  @ApiOkResponse({ type: BatchView })
  finish(@Param('id', ParseUUIDPipe) id: string, @Body() dto: FinishBatchDto): Promise<BatchView> {
    return this.finishing.finish(id, dto);
  }

  @Post(':id/abandon')
  @Allow('maker', 'seller')
  @Books()
  @HttpCode(200)
  @ApiOkResponse({ type: BatchView })
  abandon(
    @Param('id', ParseUUIDPipe) id: string,
    @Body() dto: AbandonBatchDto,
  ): Promise<BatchView> {
    return this.abandoning.abandon(id, dto);
  }

  @Post(':id/corrections')
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: BatchView })
  correct(@Param('id', ParseUUIDPipe) id: string, @Body() dto: CorrectionDto): Promise<BatchView> {
    return this.corrections.correct(id, dto);
  }

  @Get(':id/split')
  @AllowReaders()
  @ApiOkResponse({ type: SplitView })
  proposeSplit(
    @Param('id', ParseUUIDPipe) id: string,
    @Query() query: SplitQuery,
  ): Promise<SplitView> {
    return this.splitting.propose(id, query.boxes);
  }

  @Post(':id/split')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: SplitView })
  split(@Param('id', ParseUUIDPipe) id: string, @Body() dto: SplitDto): Promise<SplitView> {
    return this.splitting.split(id, dto.boxes);
  }
}
