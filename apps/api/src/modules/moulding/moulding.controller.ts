import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { AllowReaders } from '../access';
import { CavityDto, CavityView, WeighingsDto, WeighingsView } from './moulding.dto';
import { MouldingService } from './moulding.service';

@ApiTags('moulding')
@Controller('moulding')
export class MouldingController {
  constructor(private readonly moulding: MouldingService) {}

  /** Shell, filling and cap of a cavity from its drawing. */
  @Post('cavity')
  @AllowReaders()
  @HttpCode(200)
  @ApiOkResponse({ type: CavityView })
  cavity(@Body() dto: CavityDto): CavityView {
    return this.moulding.cavity(dto);
  }

  /** Shell, filling and cap from weighings of empty, filled and capped pieces. */
  @Post('weighings')
  @AllowReaders()
  @HttpCode(200)
  @ApiOkResponse({ type: WeighingsView })
  weighings(@Body() dto: WeighingsDto): WeighingsView {
    return this.moulding.weighings(dto);
  }
}
