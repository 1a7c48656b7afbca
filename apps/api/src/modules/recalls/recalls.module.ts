import { Module } from '@nestjs/common';
import { TracingModule } from '../tracing';
import { RecallsController } from './recalls.controller';
import { RecallsService } from './recalls.service';
import { RecoveriesService } from './recoveries.service';

@Module({
  imports: [TracingModule],
  controllers: [RecallsController],
  providers: [RecallsService, RecoveriesService],
  exports: [RecallsService],
})
export class RecallsModule {}
