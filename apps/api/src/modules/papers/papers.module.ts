import { Module } from '@nestjs/common';
import { TracingModule } from '../tracing';
import { PaperContexts } from './paper-context';
import { PapersController } from './papers.controller';
import { SheetsService } from './sheets.service';
import { TagsService } from './tags.service';

@Module({
  imports: [TracingModule],
  controllers: [PapersController],
  providers: [PaperContexts, SheetsService, TagsService],
  exports: [PaperContexts],
})
export class PapersModule {}
