import { Module } from '@nestjs/common';
import { BatchesController } from './batches.controller';
import { BatchesService } from './batches.service';
import { BenchService } from './bench.service';
import { DrawsService } from './draws.service';
import { FinishService } from './finish.service';

@Module({
  controllers: [BatchesController],
  providers: [BatchesService, BenchService, DrawsService, FinishService],
  exports: [BatchesService],
})
export class BatchesModule {}
