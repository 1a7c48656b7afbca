import { Body, Controller, Get, HttpCode, Param, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { type Page, PageOf } from '../../platform/paging/page';
import { Allow, AllowReaders } from '../access';
import {
  CloseRecallDto,
  FreezeDto,
  OpenRecallDto,
  RecallHeadView,
  RecallNoteDto,
  RecallQuery,
  RecallView,
  RecoveriesDto,
} from './recalls.dto';
import { RecallHoldsService } from './recall-holds.service';
import { RecallsService } from './recalls.service';
import { RecoveriesService } from './recoveries.service';

@ApiTags('recalls')
@Controller('recalls')
export class RecallsController {
  constructor(
    private readonly recalls: RecallsService,
    private readonly holds: RecallHoldsService,
    private readonly recoveries: RecoveriesService,
  ) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(RecallHeadView) })
  list(@Query() query: RecallQuery): Promise<Page<RecallHeadView>> {
    return this.recalls.list(query);
  }

  @Post()
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: RecallView })
  open(@Body() dto: OpenRecallDto): Promise<RecallView> {
    return this.recalls.open(dto);
  }

  @Get(':code')
  @AllowReaders()
  @ApiOkResponse({ type: RecallView })
  get(@Param('code') code: string): Promise<RecallView> {
    return this.recalls.get(code);
  }

  @Post(':code/freeze')
  @Allow('maker', 'seller')
  @Books()
  @HttpCode(200)
  @ApiOkResponse({ type: RecallView })
  freeze(@Param('code') code: string, @Body() dto: FreezeDto): Promise<RecallView> {
    return this.recalls.freeze(code, dto);
  }

  @Post(':code/holds')
  @Allow('maker', 'seller')
  @Books()
  @HttpCode(200)
  @ApiOkResponse({ type: RecallView })
  hold(@Param('code') code: string): Promise<RecallView> {
    return this.holds.hold(code);
  }

  @Post(':code/notes')
  @Allow('maker', 'seller')
  @Books()
  @HttpCode(200)
  @ApiOkResponse({ type: RecallView })
  note(@Param('code') code: string, @Body() dto: RecallNoteDto): Promise<RecallView> {
    return this.recalls.note(code, dto);
  }

  @Post(':code/recoveries')
  @Allow('maker', 'seller')
  @Books()
  @HttpCode(200)
  @ApiOkResponse({ type: RecallView })
  recover(@Param('code') code: string, @Body() dto: RecoveriesDto): Promise<RecallView> {
    return this.recoveries.recover(code, dto);
  }

  @Post(':code/close')
  @Allow('maker', 'seller')
  @Books()
  @HttpCode(200)
  @ApiOkResponse({ type: RecallView })
  close(@Param('code') code: string, @Body() dto: CloseRecallDto): Promise<RecallView> {
    return this.recalls.close(code, dto);
  }
}
