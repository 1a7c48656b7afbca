import { Body, Controller, Get, HttpCode, Post } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { AllowReaders } from '../access';
import {
  InfusionPlanDto,
  InfusionView,
  InfusionWeightsDto,
  RetentionGuidesView,
} from './infusions.dto';
import { InfusionsService } from './infusions.service';

@ApiTags('infusions')
@Controller('infusions')
export class InfusionsController {
  constructor(private readonly infusions: InfusionsService) {}

  @Get('retention')
  @AllowReaders()
  @ApiOkResponse({ type: RetentionGuidesView })
  guide(): RetentionGuidesView {
    return this.infusions.guide();
  }

  /** Steam, what is held back and the top-up, from three weighings. */
  @Post('weights')
  @AllowReaders()
  @HttpCode(200)
  @ApiOkResponse({ type: InfusionView })
  fromWeights(@Body() dto: InfusionWeightsDto): InfusionView {
    return this.infusions.fromWeights(dto);
  }

  @Post('plan')
  @AllowReaders()
  @HttpCode(200)
  @ApiOkResponse({ type: InfusionView })
  plan(@Body() dto: InfusionPlanDto): InfusionView {
    return this.infusions.plan(dto);
  }
}
