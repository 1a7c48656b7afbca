import { Body, Controller, Get, Param, ParseUUIDPipe, Patch, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { type Page, PageOf } from '../../platform/paging/page';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { ChangeOrderDto, CreateOrderDto, OrderQuery, OrderView } from './orders.dto';
import { OrdersService } from './orders.service';

@ApiTags('orders')
@Controller('orders')
export class OrdersController {
  constructor(private readonly orders: OrdersService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(OrderView) })
  list(@Query() query: OrderQuery): Promise<Page<OrderView>> {
    return this.orders.list(query);
  }

  @Get(':id')
  @AllowReaders()
  @ApiOkResponse({ type: OrderView })
  get(@Param('id', ParseUUIDPipe) id: string): Promise<OrderView> {
    return this.orders.get(id);
  }

  @Post()
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: OrderView })
  create(@Body() dto: CreateOrderDto): Promise<OrderView> {
    return this.orders.create(dto);
  }

  @Patch(':id')
  @Allow('maker', 'seller')
  @ApiOkResponse({ type: OrderView })
  change(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: ChangeOrderDto,
  ): Promise<OrderView> {
    return this.orders.change(id, seen, dto);
  }
}
