import { Module } from '@nestjs/common';
import { WorkshopModule } from '../workshop';
import { PlanBenchService } from './bench.service';
import { ForecastsService } from './forecasts.service';
import { PlanController } from './plan.controller';
import { PlanService } from './plan.service';
import { SupplyController } from './supply.controller';
import { SupplyService } from './supply.service';

@Module({
  imports: [WorkshopModule],
  controllers: [PlanController, SupplyController],
  providers: [PlanBenchService, ForecastsService, PlanService, SupplyService],
})
export class PlanningModule {}
