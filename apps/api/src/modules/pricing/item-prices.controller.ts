import { Body, Controller, Get, Param, ParseUUIDPipe, Post, Put, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { ItemCostView, LotCostView } from './costs.dto';
import { CostsService } from './costs.service';
import {
  BreakEvenQuery,
  BreakEvenView,
  ItemPriceView,
  ListedPriceView,
  PriceQuery,
  SetPriceDto,
} from './prices.dto';
import { PricesService } from './prices.service';
import { PriceRuleDto, PriceRuleView } from './pricing-settings.dto';
import { PricingSettingsService } from './pricing-settings.service';

@ApiTags('prices')
@Controller()
export class ItemPricesController {
  constructor(
    private readonly prices: PricesService,
    private readonly costs: CostsService,
    private readonly settings: PricingSettingsService,
  ) {}

  @Get('items/:id/cost')
  @AllowReaders()
  @ApiOkResponse({ type: ItemCostView })
  cost(@Param('id', ParseUUIDPipe) id: string): Promise<ItemCostView> {
    return this.costs.designed(id);
  }

  @Get('lots/:code/cost')
  @AllowReaders()
  @ApiOkResponse({ type: LotCostView })
  lotCost(@Param('code') code: string): Promise<LotCostView> {
    return this.costs.made(code);
  }

  @Get('items/:id/price')
  @AllowReaders()
  @ApiOkResponse({ type: ItemPriceView })
  price(
    @Param('id', ParseUUIDPipe) id: string,
    @Query() query: PriceQuery,
  ): Promise<ItemPriceView> {
    return this.prices.price(id, query);
  }

  @Put('items/:id/price-rule')
  @Allow()
  @ApiOkResponse({ type: PriceRuleView })
  changeRule(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: PriceRuleDto,
  ): Promise<PriceRuleView> {
    return this.settings.changeRule(id, seen, dto);
  }

  @Get('items/:id/prices')
  @AllowReaders()
  @ApiOkResponse({ type: [ListedPriceView] })
  history(
    @Param('id', ParseUUIDPipe) id: string,
    @Query() query: PriceQuery,
  ): Promise<ListedPriceView[]> {
    return this.prices.history(id, query.list);
  }

  @Post('items/:id/prices')
  @Allow()
  @ApiCreatedResponse({ type: ListedPriceView })
  setPrice(
    @Param('id', ParseUUIDPipe) id: string,
    @Body() dto: SetPriceDto,
  ): Promise<ListedPriceView> {
    return this.prices.setPrice(id, dto);
  }

  @Get('items/:id/break-even')
  @AllowReaders()
  @ApiOkResponse({ type: BreakEvenView })
  breakEven(
    @Param('id', ParseUUIDPipe) id: string,
    @Query() query: BreakEvenQuery,
  ): Promise<BreakEvenView> {
    return this.prices.breakEven(id, query);
  }
}
