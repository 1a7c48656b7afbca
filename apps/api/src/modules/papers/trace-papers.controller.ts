import { Controller, Get, Param, Query, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { AllowReaders } from '../access';
import { pdfFile } from './pdf-file';
import { TracePaperQuery, TraceStartPaperQuery } from './trace-papers.dto';
import { TracePapersService } from './trace-papers.service';

@ApiTags('papers')
@ApiProduces('application/pdf')
@ApiOkResponse({ schema: { type: 'string', format: 'binary' } })
@Controller()
@AllowReaders()
export class TracePapersController {
  constructor(private readonly papers: TracePapersService) {}

  @Get('lots/:code/trace.pdf')
  async lot(@Param('code') code: string, @Query() query: TracePaperQuery): Promise<StreamableFile> {
    return pdfFile(await this.papers.ofLot(code, query), `trace-${code}`);
  }

  @Get('moulds/:tag/trace.pdf')
  async mould(@Param('tag') tag: string, @Query() query: TracePaperQuery): Promise<StreamableFile> {
    return pdfFile(await this.papers.ofMould(tag, query), `trace-${tag}`);
  }

  @Get('trace/report.pdf')
  async from(@Query() query: TraceStartPaperQuery): Promise<StreamableFile> {
    return pdfFile(await this.papers.from(query), 'trace');
  }
}
