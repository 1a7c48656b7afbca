import { Body, Controller, Get, HttpCode, Param, ParseUUIDPipe, Post, Put } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { AnalysisView } from './analysis.dto';
import { AnalysisService } from './analysis.service';
import { MeasurementView, OwnTableView } from './measurements.dto';
import { MeasurementsService } from './measurements.service';
import { DraftAnalysisDto, RecipeVersionDto, ScaleDto } from './recipes.dto';
import { RecipesService } from './recipes.service';
import { ComparisonView, RecipeVersionView } from './recipes.view';
import { ScalingService } from './scaling.service';
import { ScaledView } from './scaling.view';

@ApiTags('recipes')
@Controller('recipes')
export class RecipesController {
  constructor(
    private readonly recipes: RecipesService,
    private readonly analysis: AnalysisService,
    private readonly scaling: ScalingService,
    private readonly measurements: MeasurementsService,
  ) {}

  /** Analyses a draft and saves nothing: while a recipe is typed, after every change. */
  @Post('analysis')
  @AllowReaders()
  @HttpCode(200)
  @ApiOkResponse({ type: AnalysisView })
  analyseDraft(@Body() dto: DraftAnalysisDto): Promise<AnalysisView> {
    return this.analysis.ofDraft(dto);
  }

  /** The workshop's own table of estimates against measurements. */
  @Get('water-activity-record')
  @AllowReaders()
  @ApiOkResponse({ type: OwnTableView })
  ownTable(): Promise<OwnTableView> {
    return this.measurements.ownTable();
  }

  @Get(':id')
  @AllowReaders()
  @ApiOkResponse({ type: RecipeVersionView })
  get(@Param('id', ParseUUIDPipe) id: string): Promise<RecipeVersionView> {
    return this.recipes.get(id);
  }

  @Put(':id')
  @Allow('maker')
  @ApiOkResponse({ type: RecipeVersionView })
  change(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: RecipeVersionDto,
  ): Promise<RecipeVersionView> {
    return this.recipes.change(id, seen, dto);
  }

  @Get(':id/analysis')
  @AllowReaders()
  @ApiOkResponse({ type: AnalysisView })
  analyse(@Param('id', ParseUUIDPipe) id: string): Promise<AnalysisView> {
    return this.analysis.ofVersion(id);
  }

  @Get(':id/measurements')
  @AllowReaders()
  @ApiOkResponse({ type: [MeasurementView] })
  measured(@Param('id', ParseUUIDPipe) id: string): Promise<MeasurementView[]> {
    return this.measurements.ofVersion(id);
  }

  @Get(':id/comparison/:otherId')
  @AllowReaders()
  @ApiOkResponse({ type: ComparisonView })
  compare(
    @Param('id', ParseUUIDPipe) id: string,
    @Param('otherId', ParseUUIDPipe) otherId: string,
  ): Promise<ComparisonView> {
    return this.recipes.compare(id, otherId);
  }

  @Post(':id/scale')
  @AllowReaders()
  @HttpCode(200)
  @ApiOkResponse({ type: ScaledView })
  scale(@Param('id', ParseUUIDPipe) id: string, @Body() dto: ScaleDto): Promise<ScaledView> {
    return this.scaling.scale(id, dto);
  }
}
