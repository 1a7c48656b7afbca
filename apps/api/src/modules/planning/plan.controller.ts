import {
  Body,
  Controller,
  Get,
  Header,
  Param,
  ParseUUIDPipe,
  Post,
  Put,
  Query,
  Req,
} from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { Books } from '../../platform/idempotency/books.decorator';
import { languageOf } from '../../platform/language/reader-language';
import { type Page, PageOf, PageQuery } from '../../platform/paging/page';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { WorkshopService } from '../workshop';
import { PlanBenchService } from './bench.service';
import { ForecastsService } from './forecasts.service';
import {
  CalendarQuery,
  PlanView,
  StartBatchesDto,
  StartedBatchesView,
  WayOutView,
} from './plan.dto';
import { PlanService } from './plan.service';
import { planCalendar } from './plan-calendar';
import {
  ForecastQuery,
  ForecastView,
  PlanningSettingsDto,
  PlanningSettingsView,
} from './planning-settings.dto';

@ApiTags('plan')
@Controller()
export class PlanController {
  constructor(
    private readonly plans: PlanService,
    private readonly bench: PlanBenchService,
    private readonly forecasts: ForecastsService,
    private readonly workshop: WorkshopService,
  ) {}

  @Post('plan')
  @Allow('maker', 'seller')
  @ApiCreatedResponse({ type: PlanView })
  make(): Promise<PlanView> {
    return this.plans.make();
  }

  /** An empty list until one was made; `GET /plan` is the newest of them. */
  @Get('plans')
  @AllowReaders()
  @ApiOkResponse({ type: PageOf(PlanView) })
  list(@Query() query: PageQuery): Promise<Page<PlanView>> {
    return this.plans.list(query);
  }

  @Get('plan')
  @AllowReaders()
  @ApiOkResponse({ type: PlanView })
  latest(): Promise<PlanView> {
    return this.plans.get();
  }

  @Get('plan/settings')
  @AllowReaders()
  @ApiOkResponse({ type: PlanningSettingsView })
  settings(): Promise<PlanningSettingsView> {
    return this.forecasts.settings();
  }

  @Put('plan/settings')
  @Allow('maker')
  @ApiOkResponse({ type: PlanningSettingsView })
  changeSettings(
    @IfMatch() seen: number,
    @Body() dto: PlanningSettingsDto,
  ): Promise<PlanningSettingsView> {
    return this.forecasts.changeSettings(seen, dto);
  }

  @Get('plan/ways-out')
  @AllowReaders()
  @ApiOkResponse({ type: [WayOutView] })
  waysOut(): Promise<WayOutView[]> {
    return this.plans.waysOut();
  }

  @Get('plan/:id')
  @AllowReaders()
  @ApiOkResponse({ type: PlanView })
  get(@Param('id', ParseUUIDPipe) id: string): Promise<PlanView> {
    return this.plans.get(id);
  }

  @Get('plan/:id/calendar.ics')
  @AllowReaders()
  @ApiProduces('text/calendar')
  @ApiOkResponse({ schema: { type: 'string' } })
  @Header('Content-Type', 'text/calendar; charset=utf-8')
  async calendar(
    @Param('id', ParseUUIDPipe) id: string,
    @Query() { language }: CalendarQuery,
    @Req() request: Request,
  ): Promise<string> {
    const { name } = await this.workshop.get();
    return planCalendar(await this.plans.get(id), name, language ?? languageOf(request));
  }

  @Post('plan/:id/batches')
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: StartedBatchesView })
  start(
    @Param('id', ParseUUIDPipe) id: string,
    @Body() dto: StartBatchesDto,
  ): Promise<StartedBatchesView> {
    return this.bench.start(id, dto);
  }

  @Get('items/:id/forecast')
  @AllowReaders()
  @ApiOkResponse({ type: ForecastView })
  forecast(
    @Param('id', ParseUUIDPipe) id: string,
    @Query() query: ForecastQuery,
  ): Promise<ForecastView> {
    return this.forecasts.forecast(id, query);
  }
}
