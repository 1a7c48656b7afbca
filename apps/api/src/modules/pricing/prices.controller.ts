import { Body, Controller, Get, Put, Query, type StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { pdfFile } from '../papers';
import { LotCostView } from './costs.dto';
import { CostsService } from './costs.service';
import { PriceListService } from './price-list.service';
import { PriceListAnswer, PriceListPdfQuery, PriceQuery } from './prices.dto';
import { PricingSettingsDto, PricingSettingsView } from './pricing-settings.dto';
import { PricingSettingsService } from './pricing-settings.service';

@ApiTags('prices')
@Controller('prices')
export class PricesController {
  constructor(
    private readonly priceList: PriceListService,
    private readonly settings: PricingSettingsService,
    private readonly costs: CostsService,
  ) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PriceListAnswer })
  list(@Query() query: PriceQuery): Promise<PriceListAnswer> {
    return this.priceList.list(query);
  }

  @Get('list.pdf')
  @AllowReaders()
  @ApiProduces('application/pdf')
  @ApiOkResponse({ schema: { type: 'string', format: 'binary' } })
  async pdf(@Query() query: PriceListPdfQuery): Promise<StreamableFile> {
    return pdfFile(await this.priceList.pdf(query), 'prices');
  }

  @Get('thin-margins')
  @AllowReaders()
  @ApiOkResponse({ type: [LotCostView] })
  thinMargins(): Promise<LotCostView[]> {
    return this.costs.thinMargins();
  }

  @Get('settings')
  @AllowReaders()
  @ApiOkResponse({ type: PricingSettingsView })
  getSettings(): Promise<PricingSettingsView> {
    return this.settings.get();
  }

  @Put('settings')
  @Allow()
  @ApiOkResponse({ type: PricingSettingsView })
  changeSettings(
    @IfMatch() seen: number,
    @Body() dto: PricingSettingsDto,
  ): Promise<PricingSettingsView> {
    return this.settings.change(seen, dto);
  }
}
