import { Controller, Get, Param, ParseUUIDPipe, Query, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { AllowReaders } from '../access';
import { PaperQuery, TagQuery, ThingTagQuery } from './papers.dto';
import { pdfFile } from './pdf-file';
import { SheetsService } from './sheets.service';
import { TagsService } from './tags.service';

/** Papers that are printed from what is on record; reading them changes nothing. */
@ApiTags('papers')
@ApiProduces('application/pdf')
@ApiOkResponse({ schema: { type: 'string', format: 'binary' } })
@Controller()
@AllowReaders()
export class PapersController {
  constructor(
    private readonly tags: TagsService,
    private readonly sheets: SheetsService,
  ) {}

  @Get('lots/:code/tag.pdf')
  async lotTag(@Param('code') code: string, @Query() query: TagQuery): Promise<StreamableFile> {
    return pdfFile(await this.tags.ofLot(code, query), `tag-${code}`);
  }

  @Get('deliveries/:id/tags.pdf')
  async deliveryTags(
    @Param('id', ParseUUIDPipe) id: string,
    @Query() query: TagQuery,
  ): Promise<StreamableFile> {
    return pdfFile(await this.tags.ofDelivery(id, query), 'tags');
  }

  @Get('moulds/tags.pdf')
  async mouldTags(@Query() query: ThingTagQuery): Promise<StreamableFile> {
    return pdfFile(await this.tags.ofMoulds(query), 'mould-tags');
  }

  @Get('tanks/tags.pdf')
  async tankTags(@Query() query: ThingTagQuery): Promise<StreamableFile> {
    return pdfFile(await this.tags.ofTanks(query), 'tank-tags');
  }

  @Get('places/tags.pdf')
  async placeTags(@Query() query: ThingTagQuery): Promise<StreamableFile> {
    return pdfFile(await this.tags.ofPlaces(query), 'place-tags');
  }

  @Get('batches/:id/sheet.pdf')
  async batchSheet(
    @Param('id', ParseUUIDPipe) id: string,
    @Query() query: PaperQuery,
  ): Promise<StreamableFile> {
    return pdfFile(await this.sheets.batch(id, query), 'batch-sheet');
  }

  @Get('dispatches/:id/note.pdf')
  async deliveryNote(
    @Param('id', ParseUUIDPipe) id: string,
    @Query() query: PaperQuery,
  ): Promise<StreamableFile> {
    return pdfFile(await this.sheets.deliveryNote(id, query), 'delivery-note');
  }
}
