import { Body, Controller, Get, Param, ParseUUIDPipe, Patch, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { type Page, PageOf, PageQuery } from '../../platform/paging/page';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { ChangeCustomerDto, CreateCustomerDto, CustomerView } from './customers.dto';
import { CustomersService } from './customers.service';

@ApiTags('customers')
@Controller('customers')
export class CustomersController {
  constructor(private readonly customers: CustomersService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(CustomerView) })
  list(@Query() query: PageQuery): Promise<Page<CustomerView>> {
    return this.customers.list(query);
  }

  @Get(':id')
  @AllowReaders()
  @ApiOkResponse({ type: CustomerView })
  get(@Param('id', ParseUUIDPipe) id: string): Promise<CustomerView> {
    return this.customers.get(id);
  }

  @Post()
  @Allow('seller')
  @ApiCreatedResponse({ type: CustomerView })
  create(@Body() dto: CreateCustomerDto): Promise<CustomerView> {
    return this.customers.create(dto);
  }

  @Patch(':id')
  @Allow('seller')
  @ApiOkResponse({ type: CustomerView })
  change(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: ChangeCustomerDto,
  ): Promise<CustomerView> {
    return this.customers.change(id, seen, dto);
  }
}
