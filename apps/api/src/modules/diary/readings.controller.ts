import { Body, Controller, Get, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { type Page, PageOf } from '../../platform/paging/page';
import { Allow, AllowReaders } from '../access';
import { ReadingDueView, ReadingsQuery, TakenReadingView, TakeReadingDto } from './readings.dto';
import { ReadingsService } from './readings.service';

@ApiTags('diary')
@Controller('readings')
export class ReadingsController {
  constructor(private readonly readings: ReadingsService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(TakenReadingView) })
  list(@Query() query: ReadingsQuery): Promise<Page<TakenReadingView>> {
    return this.readings.list(query);
  }

  @Get('due')
  @AllowReaders()
  @ApiOkResponse({ type: [ReadingDueView] })
  due(): Promise<ReadingDueView[]> {
    return this.readings.due();
  }

  @Post()
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: TakenReadingView })
  take(@Body() dto: TakeReadingDto): Promise<TakenReadingView> {
    return this.readings.take(dto);
  }
}
