import { Controller, Get } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { DatabaseService } from '../../platform/database/database.service';
import { AllowReaders } from '../access';
import { ChangesView } from './changes.dto';
import { markOfChanges } from './changes.queries';

@ApiTags('changes')
@Controller('changes')
export class ChangesController {
  constructor(private readonly database: DatabaseService) {}

  /** Whether anything changed: cheap enough to be asked every few seconds by every screen. */
  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: ChangesView })
  async get(): Promise<ChangesView> {
    return { mark: await markOfChanges(this.database.client) };
  }
}
