import {
  Body,
  Controller,
  Get,
  HttpCode,
  Param,
  ParseUUIDPipe,
  Post,
  Put,
  Query,
} from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Flag } from '../../platform/dto';
import { Books } from '../../platform/idempotency/books.decorator';
import { Allow, AllowReaders } from '../access';
import { PlanBenchService } from './bench.service';
import { ReservationView } from './plan.dto';
import { MinimumOrderDto, MinimumOrderView, SupplyTermDto, SupplyTermView } from './supply.dto';
import { SupplyService } from './supply.service';

class ReservationQuery {
  @Flag({ optional: true, fromQuery: true, description: 'Only those that still hold' })
  active?: boolean;
}

@ApiTags('supply')
@Controller()
export class SupplyController {
  constructor(
    private readonly supply: SupplyService,
    private readonly bench: PlanBenchService,
  ) {}

  @Get('supply-terms')
  @AllowReaders()
  @ApiOkResponse({ type: [SupplyTermView] })
  terms(): Promise<SupplyTermView[]> {
    return this.supply.terms();
  }

  /** Sets the whole of it, so a repeat does no harm and no version is asked for. */
  @Put('items/:id/supply-term')
  @Allow('maker')
  @ApiOkResponse({ type: SupplyTermView })
  setTerm(
    @Param('id', ParseUUIDPipe) id: string,
    @Body() dto: SupplyTermDto,
  ): Promise<SupplyTermView> {
    return this.supply.setTerm(id, dto);
  }

  @Get('minimum-orders')
  @AllowReaders()
  @ApiOkResponse({ type: [MinimumOrderView] })
  minimumOrders(): Promise<MinimumOrderView[]> {
    return this.supply.minimumOrders();
  }

  @Put('suppliers/:id/minimum-order')
  @Allow('maker')
  @ApiOkResponse({ type: MinimumOrderView })
  setMinimumOrder(
    @Param('id', ParseUUIDPipe) id: string,
    @Body() dto: MinimumOrderDto,
  ): Promise<MinimumOrderView> {
    return this.supply.setMinimumOrder(id, dto);
  }

  @Get('reservations')
  @AllowReaders()
  @ApiOkResponse({ type: [ReservationView] })
  reservations(@Query() query: ReservationQuery): Promise<ReservationView[]> {
    return this.bench.list(query.active === true);
  }

  @Post('reservations/:id/release')
  @HttpCode(200)
  @Allow('maker')
  @Books()
  @ApiOkResponse({ type: ReservationView })
  release(@Param('id', ParseUUIDPipe) id: string): Promise<ReservationView> {
    return this.bench.release(id);
  }
}
