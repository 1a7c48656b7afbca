import { Module } from '@nestjs/common';
import { StockValueController } from './stock-value.controller';
import { StockValueService } from './stock-value.service';
import { StocktakesService } from './stocktakes.service';

@Module({ controllers: [StockValueController], providers: [StockValueService, StocktakesService] })
export class StockValueModule {}
