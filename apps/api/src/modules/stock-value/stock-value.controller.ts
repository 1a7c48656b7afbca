import { Body, Controller, Get, Param, ParseUUIDPipe, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { type Page, PageOf, PageQuery } from '../../platform/paging/page';
import { Allow, AllowReaders } from '../access';
import {
  PurchasePriceView,
  StocktakeDto,
  StocktakeView,
  StockValueQuery,
  StockValueView,
} from './stock-value.dto';
import { StockValueService } from './stock-value.service';
import { StocktakesService } from './stocktakes.service';

@ApiTags('stock')
@Controller()
export class StockValueController {
  constructor(
    private readonly value: StockValueService,
    private readonly stocktakes: StocktakesService,
  ) {}

  @Get('stock')
  @AllowReaders()
  @ApiOkResponse({ type: StockValueView })
  report(@Query() query: StockValueQuery): Promise<StockValueView> {
    return this.value.report(query);
  }

  @Get('items/:id/purchases')
  @AllowReaders()
  @ApiOkResponse({ type: [PurchasePriceView] })
  purchases(@Param('id', ParseUUIDPipe) id: string): Promise<PurchasePriceView[]> {
    return this.value.purchases(id);
  }

  @Get('stocktakes')
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(StocktakeView) })
  list(@Query() query: PageQuery): Promise<Page<StocktakeView>> {
    return this.stocktakes.list(query);
  }

  @Post('stocktakes')
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: StocktakeView })
  take(@Body() dto: StocktakeDto): Promise<StocktakeView> {
    return this.stocktakes.take(dto);
  }
}
