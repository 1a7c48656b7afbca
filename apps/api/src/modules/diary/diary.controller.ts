import { Body, Controller, Get, Post, Query, Req, StreamableFile } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { Books } from '../../platform/idempotency/books.decorator';
import { languageOf } from '../../platform/language/reader-language';
import { Allow, AllowReaders } from '../access';
import { pdfFile } from '../papers';
import { CleaningDto, CleaningView, DiaryPdfQuery, DiaryQuery, DiaryView } from './diary.dto';
import { DiaryService } from './diary.service';

@ApiTags('diary')
@Controller()
export class DiaryController {
  constructor(private readonly diaries: DiaryService) {}

  @Get('diary')
  @AllowReaders()
  @ApiOkResponse({ type: DiaryView })
  read(@Query() query: DiaryQuery, @Req() request: Request): Promise<DiaryView> {
    return this.diaries.read(query, languageOf(request));
  }

  @Get('diary.pdf')
  @AllowReaders()
  @ApiProduces('application/pdf')
  @ApiOkResponse({ schema: { type: 'string', format: 'binary' } })
  async pdf(@Query() query: DiaryPdfQuery): Promise<StreamableFile> {
    return pdfFile(await this.diaries.pdf(query), `diary-${query.from}-${query.to}`);
  }

  @Post('cleanings')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: CleaningView })
  clean(@Body() dto: CleaningDto): Promise<CleaningView> {
    return this.diaries.clean(dto);
  }
}
