import { Module } from '@nestjs/common';
import { TracingModule } from '../tracing';
import { PaperContexts } from './paper-context';
import { PapersController } from './papers.controller';
import { SheetsService } from './sheets.service';
import { TagsService } from './tags.service';
import { TracePapersController } from './trace-papers.controller';
import { TracePapersService } from './trace-papers.service';

@Module({
  imports: [TracingModule],
  controllers: [PapersController, TracePapersController],
  providers: [TracePapersService, PaperContexts, SheetsService, TagsService],
  exports: [PaperContexts],
})
export class PapersModule {}
