import { Body, Controller, Param, ParseUUIDPipe, Post } from '@nestjs/common';
import { ApiCreatedResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { Allow } from '../access';
import { ReasonDto } from './bench.dto';
import { MouldUseView, ReadingView } from './bench.view';
import { WithdrawalsService } from './withdrawals.service';

@ApiTags('batches')
@Controller('batches/:id')
export class WithdrawalsController {
  constructor(private readonly withdrawals: WithdrawalsService) {}

  /** The reading stays, marked with why; its check is due again. */
  @Post('readings/:readingId/withdrawal')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: ReadingView })
  withdrawReading(
    @Param('id', ParseUUIDPipe) id: string,
    @Param('readingId', ParseUUIDPipe) readingId: string,
    @Body() dto: ReasonDto,
  ): Promise<ReadingView> {
    return this.withdrawals.reading(id, readingId, dto.reason);
  }

  @Post('mould-uses/:useId/withdrawal')
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: MouldUseView })
  withdrawMouldUse(
    @Param('id', ParseUUIDPipe) id: string,
    @Param('useId', ParseUUIDPipe) useId: string,
    @Body() dto: ReasonDto,
  ): Promise<MouldUseView> {
    return this.withdrawals.mouldUse(id, useId, dto.reason);
  }
}
