import { Module } from '@nestjs/common';
import { PapersModule } from '../papers';
import { DiaryController } from './diary.controller';
import { DiaryService } from './diary.service';
import { ReadingsController } from './readings.controller';
import { ReadingsService } from './readings.service';

@Module({
  imports: [PapersModule],
  controllers: [DiaryController, ReadingsController],
  providers: [DiaryService, ReadingsService],
})
export class DiaryModule {}
