import { Controller, Delete, Get, Param, ParseUUIDPipe } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { AllowReaders } from '../access';
import { StepView, StoppedWorkView } from './long-work.dto';
import { LongWorkService } from './long-work.service';

/** Requests under way: the id is the Idempotency-Key of a booking, or the Work-Id of any other. */
@ApiTags('long work')
@Controller('work/:id')
@AllowReaders()
export class LongWorkController {
  constructor(private readonly work: LongWorkService) {}

  /** How far the work is. */
  @Get()
  @ApiOkResponse({ type: StepView })
  step(@Param('id', ParseUUIDPipe) id: string): StepView {
    return this.work.step(id);
  }

  /** Stops a booking, and says whether it came too late. */
  @Delete()
  @ApiOkResponse({ type: StoppedWorkView })
  stop(@Param('id', ParseUUIDPipe) id: string): Promise<StoppedWorkView> {
    return this.work.stop(id);
  }
}
