import { Body, Controller, Get, Param, ParseUUIDPipe, Patch, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { type Page, PageOf, PageQuery } from '../../platform/paging/page';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { ChangePlaceDto, CreatePlaceDto, PlaceView } from './places.dto';
import { PlacesService } from './places.service';

@ApiTags('places')
@Controller('places')
export class PlacesController {
  constructor(private readonly places: PlacesService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(PlaceView) })
  list(@Query() query: PageQuery): Promise<Page<PlaceView>> {
    return this.places.list(query);
  }

  @Get(':id')
  @AllowReaders()
  @ApiOkResponse({ type: PlaceView })
  get(@Param('id', ParseUUIDPipe) id: string): Promise<PlaceView> {
    return this.places.get(id);
  }

  @Post()
  @Allow('maker')
  @ApiCreatedResponse({ type: PlaceView })
  create(@Body() dto: CreatePlaceDto): Promise<PlaceView> {
    return this.places.create(dto);
  }

  @Patch(':id')
  @Allow('maker')
  @ApiOkResponse({ type: PlaceView })
  change(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: ChangePlaceDto,
  ): Promise<PlaceView> {
    return this.places.change(id, seen, dto);
  }
}
