import { Module } from '@nestjs/common';
import { PapersModule } from '../papers';
import { TracingModule } from '../tracing';
import { RecallPapersController } from './recall-papers.controller';
import { RecallPapersService } from './recall-papers.service';
import { RecallsController } from './recalls.controller';
import { RecallsService } from './recalls.service';
import { RecoveriesService } from './recoveries.service';

@Module({
  imports: [TracingModule, PapersModule],
  controllers: [RecallsController, RecallPapersController],
  providers: [RecallsService, RecoveriesService, RecallPapersService],
  exports: [RecallsService],
})
export class RecallsModule {}
