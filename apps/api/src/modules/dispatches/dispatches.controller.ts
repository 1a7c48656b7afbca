import { Body, Controller, Get, Param, ParseUUIDPipe, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { type Page, PageOf } from '../../platform/paging/page';
import { Allow, AllowReaders } from '../access';
import { CounterDayQuery, CreateDispatchDto, DispatchQuery, ReturnDto } from './dispatches.dto';
import { CounterSalesView, DispatchView } from './dispatches.view';
import { DispatchesService } from './dispatches.service';
import { ReturnsService } from './returns.service';

@ApiTags('dispatches')
@Controller('dispatches')
export class DispatchesController {
  constructor(
    private readonly dispatches: DispatchesService,
    private readonly returns: ReturnsService,
  ) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(DispatchView) })
  list(@Query() query: DispatchQuery): Promise<Page<DispatchView>> {
    return this.dispatches.list(query);
  }

  @Get('counter-sales')
  @AllowReaders()
  @ApiOkResponse({ type: CounterSalesView })
  counterSales(@Query() query: CounterDayQuery): Promise<CounterSalesView> {
    return this.dispatches.counterSales(query);
  }

  @Get(':id')
  @AllowReaders()
  @ApiOkResponse({ type: DispatchView })
  get(@Param('id', ParseUUIDPipe) id: string): Promise<DispatchView> {
    return this.dispatches.get(id);
  }

  @Post()
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: DispatchView })
  create(@Body() dto: CreateDispatchDto): Promise<DispatchView> {
    return this.dispatches.create(dto);
  }

  @Post(':id/returns')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: DispatchView })
  bookReturn(
    @Param('id', ParseUUIDPipe) id: string,
    @Body() dto: ReturnDto,
  ): Promise<DispatchView> {
    return this.returns.book(id, dto);
  }
}
