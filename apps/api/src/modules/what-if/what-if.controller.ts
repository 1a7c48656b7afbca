import {
  Body,
  Controller,
  Delete,
  Get,
  HttpCode,
  Param,
  ParseUUIDPipe,
  Post,
  Put,
  Query,
} from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { ScenariosService } from './scenarios.service';
import { CompareQuery, SaveScenarioDto, ScenarioView, WhatIfDto, WhatIfView } from './what-if.dto';
import { WhatIfService } from './what-if.service';

@ApiTags('what-if')
@Controller('what-if')
export class WhatIfController {
  constructor(
    private readonly whatIf: WhatIfService,
    private readonly scenarios: ScenariosService,
  ) {}

  /** Answers a question about what is there; it books nothing, so everyone may ask. */
  @Post()
  @HttpCode(200)
  @AllowReaders()
  @ApiOkResponse({ type: WhatIfView })
  reckon(@Body() dto: WhatIfDto): Promise<WhatIfView> {
    return this.whatIf.reckon(dto);
  }

  @Get('compare')
  @AllowReaders()
  @ApiOkResponse({ type: WhatIfView })
  compare(@Query() query: CompareQuery): Promise<WhatIfView> {
    return this.scenarios.compare(query);
  }

  @Get('scenarios')
  @AllowReaders()
  @ApiOkResponse({ type: [ScenarioView] })
  list(): Promise<ScenarioView[]> {
    return this.scenarios.list();
  }

  @Post('scenarios')
  @Allow('maker', 'seller')
  @ApiCreatedResponse({ type: ScenarioView })
  save(@Body() dto: SaveScenarioDto): Promise<ScenarioView> {
    return this.scenarios.save(dto);
  }

  @Put('scenarios/:id')
  @Allow('maker', 'seller')
  @ApiOkResponse({ type: ScenarioView })
  change(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: SaveScenarioDto,
  ): Promise<ScenarioView> {
    return this.scenarios.change(id, seen, dto);
  }

  @Delete('scenarios/:id')
  @Allow('maker', 'seller')
  @ApiOkResponse({ type: ScenarioView })
  remove(@Param('id', ParseUUIDPipe) id: string): Promise<ScenarioView> {
    return this.scenarios.remove(id);
  }
}
