import { Body, Controller, Get, Param, ParseUUIDPipe, Patch, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { type Page, PageOf, PageQuery } from '../../platform/paging/page';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { ChangeSupplierDto, CreateSupplierDto, SupplierView } from './suppliers.dto';
import { SuppliersService } from './suppliers.service';

@ApiTags('suppliers')
@Controller('suppliers')
export class SuppliersController {
  constructor(private readonly suppliers: SuppliersService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(SupplierView) })
  list(@Query() query: PageQuery): Promise<Page<SupplierView>> {
    return this.suppliers.list(query);
  }

  @Get(':id')
  @AllowReaders()
  @ApiOkResponse({ type: SupplierView })
  get(@Param('id', ParseUUIDPipe) id: string): Promise<SupplierView> {
    return this.suppliers.get(id);
  }

  @Post()
  @Allow('maker')
  @ApiCreatedResponse({ type: SupplierView })
  create(@Body() dto: CreateSupplierDto): Promise<SupplierView> {
    return this.suppliers.create(dto);
  }

  @Patch(':id')
  @Allow('maker')
  @ApiOkResponse({ type: SupplierView })
  change(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: ChangeSupplierDto,
  ): Promise<SupplierView> {
    return this.suppliers.change(id, seen, dto);
  }
}
