import { Body, Controller, Get, HttpCode, Param, ParseUUIDPipe, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { Allow, AllowReaders } from '../access';
import { AbandonService } from './abandon.service';
import { BatchView } from './batches.view';
import { CorrectionsService } from './corrections.service';
import { AbandonBatchDto, CorrectionDto, FinishBatchDto } from './ending.dto';
import { FinishService } from './finish.service';
import { SplitService } from './split.service';
import { SplitDto, SplitQuery, SplitView } from './split.view';

/** How a batch ends, and what is put right after. */
@ApiTags('batches')
@Controller('batches')
export class EndingsController {
  constructor(
    private readonly finishing: FinishService,
    private readonly abandoning: AbandonService,
    private readonly corrections: CorrectionsService,
    private readonly splitting: SplitService,
  ) {}

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
