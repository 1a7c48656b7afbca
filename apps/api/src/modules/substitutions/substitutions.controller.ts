import { Body, Controller, HttpCode, Param, ParseUUIDPipe, Post } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { AllowReaders } from '../access';
import { SubstitutionDto, SubstitutionView } from './substitutions.dto';
import { SubstitutionsService } from './substitutions.service';

@ApiTags('batches')
@Controller('batches/:id/substitutions')
export class SubstitutionsController {
  constructor(private readonly substitutions: SubstitutionsService) {}

  /** Books nothing: a substitute is accepted in the draw that takes it, with the reason. */
  @Post()
  @AllowReaders()
  @HttpCode(200)
  @ApiOkResponse({ type: SubstitutionView })
  compare(
    @Param('id', ParseUUIDPipe) id: string,
    @Body() dto: SubstitutionDto,
  ): Promise<SubstitutionView> {
    return this.substitutions.compare(id, dto);
  }
}
