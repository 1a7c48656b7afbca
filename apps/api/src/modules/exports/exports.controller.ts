import { Readable } from 'node:stream';
import { Controller, Get, Query, Req, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { AllowReaders } from '../access';
import { EventsQuery } from './exports.dto';
import { ExportsService } from './exports.service';

const download = (pieces: AsyncIterable<string>, type: string, name: string): StreamableFile =>
  new StreamableFile(Readable.from(pieces, { objectMode: false }), {
    type,
    disposition: `attachment; filename="${name}"`,
  });

@ApiTags('exports')
@Controller('exports')
@AllowReaders()
export class ExportsController {
  constructor(private readonly exports: ExportsService) {}

  /** Receiving, making, charging, packing, shipping and destroying, streamed as EPCIS 2.0. */
  @Get('events')
  @ApiProduces('application/ld+json')
  @ApiOkResponse({ description: 'An EPCISDocument', schema: { type: 'object' } })
  async events(@Query() query: EventsQuery, @Req() request: Request): Promise<StreamableFile> {
    await this.exports.check(query);
    const baseUri = `${request.protocol}://${request.get('host') ?? 'localhost'}`;
    return download(
      this.exports.events(query, { baseUri }),
      'application/ld+json; charset=utf-8',
      'events.jsonld',
    );
  }

  @Get('lots.csv')
  @ApiProduces('text/csv')
  @ApiOkResponse({ description: 'One line for each lot', schema: { type: 'string' } })
  lots(): StreamableFile {
    return download(this.exports.lots(), 'text/csv; charset=utf-8', 'lots.csv');
  }
}
