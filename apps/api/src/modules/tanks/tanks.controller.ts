import { Body, Controller, Get, Param, ParseUUIDPipe, Patch, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { type Page, PageOf, PageQuery } from '../../platform/paging/page';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { ChargesService } from './charges.service';
import { EmptyingsService } from './emptyings.service';
import { ChangeTankDto, ChargeDto, CreateTankDto, EmptyingDto } from './tanks.dto';
import { ChargeView, EmptyingView, TankView } from './tanks.view';
import { TanksService } from './tanks.service';

@ApiTags('tanks')
@Controller('tanks')
export class TanksController {
  constructor(
    private readonly tanks: TanksService,
    private readonly charges: ChargesService,
    private readonly emptyings: EmptyingsService,
  ) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(TankView) })
  list(@Query() query: PageQuery): Promise<Page<TankView>> {
    return this.tanks.list(query);
  }

  @Get(':id')
  @AllowReaders()
  @ApiOkResponse({ type: TankView })
  get(@Param('id', ParseUUIDPipe) id: string): Promise<TankView> {
    return this.tanks.get(id);
  }

  @Post()
  @Allow('maker')
  @ApiCreatedResponse({ type: TankView })
  create(@Body() dto: CreateTankDto): Promise<TankView> {
    return this.tanks.create(dto);
  }

  @Patch(':id')
  @Allow('maker')
  @ApiOkResponse({ type: TankView })
  change(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: ChangeTankDto,
  ): Promise<TankView> {
    return this.tanks.change(id, seen, dto);
  }

  @Post(':id/charges')
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: ChargeView })
  charge(@Param('id', ParseUUIDPipe) id: string, @Body() dto: ChargeDto): Promise<ChargeView> {
    return this.charges.charge(id, dto);
  }

  @Post(':id/emptyings')
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: EmptyingView })
  empty(@Param('id', ParseUUIDPipe) id: string, @Body() dto: EmptyingDto): Promise<EmptyingView> {
    return this.emptyings.empty(id, dto);
  }
}
