import { Body, Controller, Get, Param, ParseUUIDPipe, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { type Page, PageOf } from '../../platform/paging/page';
import { Allow, AllowReaders } from '../access';
import { AdjustmentsService } from './adjustments.service';
import { HoldsService } from './holds.service';
import {
  AdjustmentDto,
  LotQuery,
  LotView,
  MoveDto,
  MovementView,
  PinSpecificationDto,
  PlaceHoldDto,
  ReleaseHoldDto,
  ReversalDto,
} from './lots.dto';
import { LotsService } from './lots.service';

@ApiTags('lots')
@Controller('lots')
export class LotsController {
  constructor(
    private readonly lots: LotsService,
    private readonly holds: HoldsService,
    private readonly adjustments: AdjustmentsService,
  ) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(LotView) })
  list(@Query() query: LotQuery): Promise<Page<LotView>> {
    return this.lots.list(query);
  }

  @Get(':code')
  @AllowReaders()
  @ApiOkResponse({ type: LotView })
  get(@Param('code') code: string): Promise<LotView> {
    return this.lots.get(code);
  }

  @Get(':code/movements')
  @AllowReaders()
  @ApiOkResponse({ type: [MovementView] })
  movements(@Param('code') code: string): Promise<MovementView[]> {
    return this.lots.movements(code);
  }

  /** Anyone who works here may stop a lot; only the owner lets it go again. */
  @Post(':code/holds')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: LotView })
  placeHold(@Param('code') code: string, @Body() dto: PlaceHoldDto): Promise<LotView> {
    return this.holds.place(code, dto.reason);
  }

  @Post(':code/holds/:holdId/release')
  @Allow()
  @Books()
  @ApiCreatedResponse({ type: LotView })
  releaseHold(
    @Param('code') code: string,
    @Param('holdId', ParseUUIDPipe) holdId: string,
    @Body() dto: ReleaseHoldDto,
  ): Promise<LotView> {
    return this.holds.release(code, holdId, dto.reason);
  }

  @Post(':code/adjustments')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: LotView })
  adjust(@Param('code') code: string, @Body() dto: AdjustmentDto): Promise<LotView> {
    return this.adjustments.adjust(code, dto);
  }

  @Post(':code/adjustments/:movementId/reversal')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: LotView })
  reverse(
    @Param('code') code: string,
    @Param('movementId', ParseUUIDPipe) movementId: string,
    @Body() dto: ReversalDto,
  ): Promise<LotView> {
    return this.adjustments.reverse(code, movementId, dto.reason);
  }

  @Post(':code/place')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: LotView })
  move(@Param('code') code: string, @Body() dto: MoveDto): Promise<LotView> {
    return this.lots.move(code, dto.placeId);
  }

  @Post(':code/specification')
  @Allow()
  @Books()
  @ApiCreatedResponse({ type: LotView })
  pinSpecification(
    @Param('code') code: string,
    @Body() dto: PinSpecificationDto,
  ): Promise<LotView> {
    return this.lots.pinSpecification(code, dto);
  }
}
