import { Module } from '@nestjs/common';
import { AdjustmentsService } from './adjustments.service';
import { HoldsService } from './holds.service';
import { LotsController } from './lots.controller';
import { LotsService } from './lots.service';

@Module({
  controllers: [LotsController],
  providers: [LotsService, HoldsService, AdjustmentsService],
  exports: [LotsService, HoldsService, AdjustmentsService],
})
export class LotsModule {}
