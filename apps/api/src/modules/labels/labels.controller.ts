import {
  Body,
  Controller,
  Get,
  HttpCode,
  Param,
  ParseUUIDPipe,
  Post,
  Query,
  StreamableFile,
} from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { Books } from '../../platform/idempotency/books.decorator';
import { Allow, AllowReaders } from '../access';
import { ContactDecisionsService } from './contact-decisions.service';
import { DeclarationsService } from './declarations.service';
import { LabelRunsService } from './label-runs.service';
import { ContactDecisionView, DecideContactDto } from './contact-decisions.dto';
import { DeclarationQuery, DeclarationView } from './declarations.dto';
import { LabelRunView, LabelsDto } from './label-runs.dto';
import { QuantityCheckView, WeighPacksDto } from './quantity-checks.dto';
import { QuantityChecksService } from './quantity-checks.service';

const pdfFile = (bytes: Buffer, name: string): StreamableFile =>
  new StreamableFile(bytes, { type: 'application/pdf', disposition: `inline; filename="${name}"` });

@ApiTags('labels')
@Controller('lots/:code')
export class LabelsController {
  constructor(
    private readonly declarations: DeclarationsService,
    private readonly runs: LabelRunsService,
    private readonly contacts: ContactDecisionsService,
    private readonly checks: QuantityChecksService,
  ) {}

  @Get('declaration')
  @AllowReaders()
  @ApiOkResponse({ type: DeclarationView })
  declaration(
    @Param('code') code: string,
    @Query() query: DeclarationQuery,
  ): Promise<DeclarationView> {
    return this.declarations.get(code, query);
  }

  /** The latest run as it was printed; a first print is a run. */
  @Get('label.pdf')
  @AllowReaders()
  @ApiProduces('application/pdf')
  @ApiOkResponse({ description: 'The bytes of the latest run' })
  async latestPdf(@Param('code') code: string): Promise<StreamableFile> {
    return pdfFile(await this.runs.pdf(code), 'label.pdf');
  }

  @Get('label-runs')
  @AllowReaders()
  @ApiOkResponse({ type: [LabelRunView] })
  labelRuns(@Param('code') code: string): Promise<LabelRunView[]> {
    return this.runs.list(code);
  }

  @Post('label-runs')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: LabelRunView })
  print(@Param('code') code: string, @Body() dto: LabelsDto): Promise<LabelRunView> {
    return this.runs.print(code, dto);
  }

  /** Looks and keeps nothing: the bytes are those that printing the same today puts on record. */
  @Post('label-previews')
  @AllowReaders()
  @HttpCode(200)
  @ApiProduces('application/pdf')
  @ApiOkResponse({ description: 'The PDF that a run of the same would be' })
  async preview(@Param('code') code: string, @Body() dto: LabelsDto): Promise<StreamableFile> {
    return pdfFile(await this.runs.preview(code, dto), 'label.pdf');
  }

  @Get('label-runs/:id/label.pdf')
  @AllowReaders()
  @ApiProduces('application/pdf')
  @ApiOkResponse({ description: 'The bytes of that run' })
  async pdf(
    @Param('code') code: string,
    @Param('id', ParseUUIDPipe) id: string,
  ): Promise<StreamableFile> {
    return pdfFile(await this.runs.pdf(code, id), 'label.pdf');
  }

  @Get('contact-decisions')
  @AllowReaders()
  @ApiOkResponse({ type: [ContactDecisionView] })
  decisions(@Param('code') code: string): Promise<ContactDecisionView[]> {
    return this.contacts.list(code, undefined);
  }

  @Post('contact-decisions')
  @Allow('maker')
  @Books()
  @ApiCreatedResponse({ type: ContactDecisionView })
  decide(@Param('code') code: string, @Body() dto: DecideContactDto): Promise<ContactDecisionView> {
    return this.contacts.decide(code, dto);
  }

  @Get('quantity-checks')
  @AllowReaders()
  @ApiOkResponse({ type: [QuantityCheckView] })
  quantityChecks(@Param('code') code: string): Promise<QuantityCheckView[]> {
    return this.checks.list(code);
  }

  @Post('quantity-checks')
  @Allow('maker', 'seller')
  @Books()
  @ApiCreatedResponse({ type: QuantityCheckView })
  weigh(@Param('code') code: string, @Body() dto: WeighPacksDto): Promise<QuantityCheckView> {
    return this.checks.weigh(code, dto);
  }
}
