import { Body, Controller, Get, Post, Query } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { type Page, PageOf } from '../../platform/paging/page';
import { Allow, AllowReaders } from '../access';
import { CalibrateDto, CalibrationQuery, CalibrationView } from './meters.dto';
import { MetersService } from './meters.service';

@ApiTags('meters')
@Controller('meters/calibrations')
export class MetersController {
  constructor(private readonly meters: MetersService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(CalibrationView) })
  list(@Query() query: CalibrationQuery): Promise<Page<CalibrationView>> {
    return this.meters.list(query);
  }

  @Post()
  @Allow('maker')
  @ApiCreatedResponse({ type: CalibrationView })
  calibrate(@Body() dto: CalibrateDto): Promise<CalibrationView> {
    return this.meters.calibrate(dto);
  }
}
