import { Module } from '@nestjs/common';
import { DispatchesController } from './dispatches.controller';
import { DispatchesService } from './dispatches.service';
import { ReturnsService } from './returns.service';

@Module({
  controllers: [DispatchesController],
  providers: [DispatchesService, ReturnsService],
  exports: [DispatchesService],
})
export class DispatchesModule {}
