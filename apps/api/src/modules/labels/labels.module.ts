import { Module } from '@nestjs/common';
import { ContactDecisionsService } from './contact-decisions.service';
import { CounterMatrixService } from './counter-matrix.service';
import { DeclarationsService } from './declarations.service';
import { LabelRunsService } from './label-runs.service';
import { LabelSettingsController } from './label-settings.controller';
import { LabelSettingsService } from './label-settings.service';
import { LabelsController } from './labels.controller';
import { QuantityChecksService } from './quantity-checks.service';
import { LabelReportsController } from './reports.controller';

@Module({
  controllers: [LabelsController, LabelSettingsController, LabelReportsController],
  providers: [
    ContactDecisionsService,
    CounterMatrixService,
    DeclarationsService,
    LabelRunsService,
    LabelSettingsService,
    QuantityChecksService,
  ],
})
export class LabelsModule {}
