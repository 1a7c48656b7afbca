import { Controller, Get, Query } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { AllowReaders } from '../access';
import { ScanQuery, ScanView } from './scan.dto';
import { ScanService } from './scan.service';

@ApiTags('scan')
@Controller('scan')
export class ScanController {
  constructor(private readonly scans: ScanService) {}

  /** Anything with a code: a supplier's symbol, a lot's tag, a mould, a tank, a box, a batch sheet. */
  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: ScanView })
  scan(@Query() query: ScanQuery): Promise<ScanView> {
    return this.scans.scan(query.text);
  }
}
