import { Body, Controller, Get, Param, Post } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { Allow, AllowReaders } from '../access';
import { FreezerDto, LotDatesView } from './lot-dates.dto';
import { LotDatesService } from './lot-dates.service';

@ApiTags('lots')
@Controller('lots/:code')
export class LotDatesController {
  constructor(private readonly dates: LotDatesService) {}

  @Get('dates')
  @AllowReaders()
  @ApiOkResponse({ type: LotDatesView })
  explain(@Param('code') code: string): Promise<LotDatesView> {
    return this.dates.explain(code);
  }

  @Post('freezing')
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: LotDatesView })
  freeze(@Param('code') code: string, @Body() dto: FreezerDto): Promise<LotDatesView> {
    return this.dates.freeze(code, dto.on);
  }

  @Post('thawing')
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: LotDatesView })
  thaw(@Param('code') code: string, @Body() dto: FreezerDto): Promise<LotDatesView> {
    return this.dates.thaw(code, dto.on);
  }
}
