import { Body, Controller, Param, ParseUUIDPipe, Post } from '@nestjs/common';
import { ApiCreatedResponse, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { Allow } from '../access';
import { OpenPartDto } from './batches.dto';
import { BatchView } from './batches.view';
import { PartsService } from './parts.service';

@ApiTags('batches')
@Controller('batches/:id/parts')
export class PartsController {
  constructor(private readonly parts: PartsService) {}

  /** Another pot or go of the same making, as a batch of its own. */
  @Post()
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: BatchView })
  open(@Param('id', ParseUUIDPipe) id: string, @Body() dto: OpenPartDto): Promise<BatchView> {
    return this.parts.open(id, dto);
  }
}
