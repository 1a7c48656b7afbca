import { Module } from '@nestjs/common';
import { PapersModule } from '../papers';
import { CostsService } from './costs.service';
import { ItemPricesController } from './item-prices.controller';
import { PriceListService } from './price-list.service';
import { PricesController } from './prices.controller';
import { PricesService } from './prices.service';
import { PricingSettingsService } from './pricing-settings.service';

@Module({
  imports: [PapersModule],
  controllers: [PricesController, ItemPricesController],
  providers: [CostsService, PriceListService, PricesService, PricingSettingsService],
})
export class PricingModule {}
