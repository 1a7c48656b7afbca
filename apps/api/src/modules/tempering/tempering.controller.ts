import { Body, Controller, Get, HttpCode, Param, ParseUUIDPipe, Post, Put } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import {
  RoomDto,
  RoomVerdictView,
  TemperingCurveDto,
  TemperingReadingDto,
  TemperingVerdictView,
  TemperingView,
} from './tempering.dto';
import { TemperingService } from './tempering.service';

@ApiTags('tempering')
@Controller()
export class TemperingController {
  constructor(private readonly tempering: TemperingService) {}

  /** Every item that has a curve: empty until one is set. */
  @Get('tempering/curves')
  @AllowReaders()
  @ApiOkResponse({ type: [TemperingView] })
  curves(): Promise<TemperingView[]> {
    return this.tempering.curves();
  }

  @Get('items/:id/tempering')
  @AllowReaders()
  @ApiOkResponse({ type: TemperingView })
  get(@Param('id', ParseUUIDPipe) id: string): Promise<TemperingView> {
    return this.tempering.get(id);
  }

  @Put('items/:id/tempering')
  @Allow('maker')
  @ApiOkResponse({ type: TemperingView })
  change(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: TemperingCurveDto,
  ): Promise<TemperingView> {
    return this.tempering.change(id, seen, dto);
  }

  /** What a temperature means at a step, and what to do next. Books nothing. */
  @Post('items/:id/tempering/verdict')
  @AllowReaders()
  @HttpCode(200)
  @ApiOkResponse({ type: TemperingVerdictView })
  judge(
    @Param('id', ParseUUIDPipe) id: string,
    @Body() dto: TemperingReadingDto,
  ): Promise<TemperingVerdictView> {
    return this.tempering.judge(id, dto);
  }

  @Post('tempering/room')
  @AllowReaders()
  @HttpCode(200)
  @ApiOkResponse({ type: RoomVerdictView })
  room(@Body() dto: RoomDto): RoomVerdictView {
    return this.tempering.room(dto);
  }
}
