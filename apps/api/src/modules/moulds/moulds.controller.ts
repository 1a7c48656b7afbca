import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { type Page, PageOf } from '../../platform/paging/page';
import { Allow, AllowReaders } from '../access';
import {
  CreateMouldsDto,
  InspectionDto,
  MouldDetailView,
  MouldList,
  MouldQuery,
  MouldView,
} from './moulds.dto';
import { MouldsService } from './moulds.service';

@ApiTags('moulds')
@Controller('moulds')
export class MouldsController {
  constructor(private readonly moulds: MouldsService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(MouldView) })
  list(@Query() query: MouldQuery): Promise<Page<MouldView>> {
    return this.moulds.list(query);
  }

  @Get(':tag')
  @AllowReaders()
  @ApiOkResponse({ type: MouldDetailView })
  get(@Param('tag') tag: string): Promise<MouldDetailView> {
    return this.moulds.get(tag);
  }

  @Post()
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: MouldList })
  create(@Body() dto: CreateMouldsDto): Promise<MouldList> {
    return this.moulds.create(dto);
  }

  @Post(':tag/inspections')
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: MouldDetailView })
  inspect(@Param('tag') tag: string, @Body() dto: InspectionDto): Promise<MouldDetailView> {
    return this.moulds.inspect(tag, dto);
  }
}
