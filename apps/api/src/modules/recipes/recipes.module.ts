import { Module } from '@nestjs/common';
import { AnalysisService } from './analysis.service';
import { ItemRecipesController } from './item-recipes.controller';
import { MeasurementsService } from './measurements.service';
import { RecipesController } from './recipes.controller';
import { RecipesService } from './recipes.service';
import { ScalingService } from './scaling.service';

@Module({
  controllers: [RecipesController, ItemRecipesController],
  providers: [RecipesService, AnalysisService, ScalingService, MeasurementsService],
})
export class RecipesModule {}
