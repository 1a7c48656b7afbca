import { Module } from '@nestjs/common';
import { CommonCausesService } from './common-causes.service';
import { ComplaintsController } from './complaints.controller';
import { ComplaintsService } from './complaints.service';

@Module({
  controllers: [ComplaintsController],
  providers: [ComplaintsService, CommonCausesService],
})
export class ComplaintsModule {}
