import { Body, Controller, Get, Param, ParseUUIDPipe, Patch, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { type Page, PageOf, PageQuery } from '../../platform/paging/page';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { ChangeMouldDesignDto, CreateMouldDesignDto, MouldDesignView } from './mould-designs.dto';
import { MouldDesignsService } from './mould-designs.service';

@ApiTags('mould-designs')
@Controller('mould-designs')
export class MouldDesignsController {
  constructor(private readonly designs: MouldDesignsService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(MouldDesignView) })
  list(@Query() query: PageQuery): Promise<Page<MouldDesignView>> {
    return this.designs.list(query);
  }

  @Get(':id')
  @AllowReaders()
  @ApiOkResponse({ type: MouldDesignView })
  get(@Param('id', ParseUUIDPipe) id: string): Promise<MouldDesignView> {
    return this.designs.get(id);
  }

  @Post()
  @Allow('maker')
  @ApiCreatedResponse({ type: MouldDesignView })
  create(@Body() dto: CreateMouldDesignDto): Promise<MouldDesignView> {
    return this.designs.create(dto);
  }

  @Patch(':id')
  @Allow('maker')
  @ApiOkResponse({ type: MouldDesignView })
  change(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: ChangeMouldDesignDto,
  ): Promise<MouldDesignView> {
    return this.designs.change(id, seen, dto);
  }
}
