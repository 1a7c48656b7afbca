import { Body, Controller, Get, Param, ParseUUIDPipe, Patch, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { type Page, PageOf } from '../../platform/paging/page';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { ChangeItemDto, CreateItemDto, ItemQuery, ItemView } from './items.dto';
import { ItemsService } from './items.service';

@ApiTags('items')
@Controller('items')
export class ItemsController {
  constructor(private readonly items: ItemsService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(ItemView) })
  list(@Query() query: ItemQuery): Promise<Page<ItemView>> {
    return this.items.list(query);
  }

  @Get(':id')
  @AllowReaders()
  @ApiOkResponse({ type: ItemView })
  get(@Param('id', ParseUUIDPipe) id: string): Promise<ItemView> {
    return this.items.get(id);
  }

  @Post()
  @Allow('maker')
  @ApiCreatedResponse({ type: ItemView })
  create(@Body() dto: CreateItemDto): Promise<ItemView> {
    return this.items.create(dto);
  }

  @Patch(':id')
  @Allow('maker')
  @ApiOkResponse({ type: ItemView })
  change(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: ChangeItemDto,
  ): Promise<ItemView> {
    return this.items.change(id, seen, dto);
  }
}
