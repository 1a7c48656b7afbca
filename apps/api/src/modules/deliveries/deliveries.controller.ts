import { Body, Controller, Get, Param, ParseUUIDPipe, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { type Page, PageOf } from '../../platform/paging/page';
import { Allow, AllowReaders } from '../access';
import { CreateDeliveryDto, DeliveryQuery, DeliveryView } from './deliveries.dto';
import { DeliveriesService } from './deliveries.service';

@ApiTags('deliveries')
@Controller('deliveries')
export class DeliveriesController {
  constructor(private readonly deliveries: DeliveriesService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(DeliveryView) })
  list(@Query() query: DeliveryQuery): Promise<Page<DeliveryView>> {
    return this.deliveries.list(query);
  }

  @Get(':id')
  @AllowReaders()
  @ApiOkResponse({ type: DeliveryView })
  get(@Param('id', ParseUUIDPipe) id: string): Promise<DeliveryView> {
    return this.deliveries.get(id);
  }

  /** Takes goods in: each line makes one lot, on hold by itself where something is missing. */
  @Post()
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: DeliveryView })
  create(@Body() dto: CreateDeliveryDto): Promise<DeliveryView> {
    return this.deliveries.create(dto);
  }
}
