import { Module } from '@nestjs/common';
import { PapersModule } from '../papers';
import { TracingModule } from '../tracing';
import { RecallPapersController } from './recall-papers.controller';
import { RecallPapersService } from './recall-papers.service';
import { RecallHoldsService } from './recall-holds.service';
import { RecallsController } from './recalls.controller';
import { RecallsService } from './recalls.service';
import { RecoveriesService } from './recoveries.service';

@Module({
  imports: [TracingModule, PapersModule],
  controllers: [RecallsController, RecallPapersController],
  providers: [RecallsService, RecallHoldsService, RecoveriesService, RecallPapersService],
  exports: [RecallsService],
})
export class RecallsModule {}
