import { Controller, Get, Header, Param, Query, type StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { AllowReaders } from '../access';
import { pdfFile } from '../papers';
import { recallCsv } from './recall-csv';
import { RecallPaperQuery } from './recall-papers.dto';
import { RecallPapersService } from './recall-papers.service';
import { RecallsService } from './recalls.service';

/** A recall on paper: reading it changes nothing; that it was used is noted by the one who uses it. */
@ApiTags('recalls')
@Controller('recalls/:code')
@AllowReaders()
export class RecallPapersController {
  constructor(
    private readonly papers: RecallPapersService,
    private readonly recalls: RecallsService,
  ) {}

  @Get('list.csv')
  @ApiProduces('text/csv')
  @ApiOkResponse({ schema: { type: 'string' } })
  @Header('Content-Type', 'text/csv; charset=utf-8')
  @Header('Content-Disposition', 'attachment; filename="recall-list.csv"')
  async csv(@Param('code') code: string): Promise<string> {
    return recallCsv(await this.recalls.get(code));
  }

  @Get('list.pdf')
  @ApiProduces('application/pdf')
  @ApiOkResponse({ schema: { type: 'string', format: 'binary' } })
  async list(
    @Param('code') code: string,
    @Query() query: RecallPaperQuery,
  ): Promise<StreamableFile> {
    return pdfFile(await this.papers.list(code, query), `recall-list-${code}`);
  }

  @Get('letters.pdf')
  @ApiProduces('application/pdf')
  @ApiOkResponse({ schema: { type: 'string', format: 'binary' } })
  async letters(
    @Param('code') code: string,
    @Query() query: RecallPaperQuery,
  ): Promise<StreamableFile> {
    return pdfFile(await this.papers.letters(code, query), `recall-letters-${code}`);
  }

  @Get('notice.pdf')
  @ApiProduces('application/pdf')
  @ApiOkResponse({ schema: { type: 'string', format: 'binary' } })
  async notice(
    @Param('code') code: string,
    @Query() query: RecallPaperQuery,
  ): Promise<StreamableFile> {
    return pdfFile(await this.papers.notice(code, query), `recall-notice-${code}`);
  }

  @Get('report.pdf')
  @ApiProduces('application/pdf')
  @ApiOkResponse({ schema: { type: 'string', format: 'binary' } })
  async report(
    @Param('code') code: string,
    @Query() query: RecallPaperQuery,
  ): Promise<StreamableFile> {
    return pdfFile(await this.papers.report(code, query), `recall-report-${code}`);
  }
}
