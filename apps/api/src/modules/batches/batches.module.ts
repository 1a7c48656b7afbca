import { Module } from '@nestjs/common';
import { AbandonService } from './abandon.service';
import { BatchesController } from './batches.controller';
import { BatchesService } from './batches.service';
import { BenchService } from './bench.service';
import { CorrectionsService } from './corrections.service';
import { DrawsService } from './draws.service';
import { EndingsController } from './endings.controller';
import { FinishService } from './finish.service';
import { PartsController } from './parts.controller';
import { PartsService } from './parts.service';
import { SplitService } from './split.service';
import { WithdrawalsController } from './withdrawals.controller';
import { WithdrawalsService } from './withdrawals.service';

@Module({
  controllers: [BatchesController, EndingsController, PartsController, WithdrawalsController],
  providers: [
    BatchesService,
    BenchService,
    DrawsService,
    FinishService,
    AbandonService,
    CorrectionsService,
    SplitService,
    PartsService,
    WithdrawalsService,
  ],
  exports: [BatchesService],
})
export class BatchesModule {}
