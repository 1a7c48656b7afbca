import { Body, Controller, Get, Patch, Post } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import {
  ChangeWorkshopDto,
  LabourRateDto,
  LabourRateView,
  VatRateDto,
  VatRateView,
  WorkshopView,
} from './workshop.dto';
import { WorkshopService } from './workshop.service';

@ApiTags('workshop')
@Controller('workshop')
export class WorkshopController {
  constructor(private readonly workshop: WorkshopService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: WorkshopView })
  get(): Promise<WorkshopView> {
    return this.workshop.get();
  }

  @Patch()
  @Allow()
  @ApiOkResponse({ type: WorkshopView })
  change(@IfMatch() seen: number, @Body() dto: ChangeWorkshopDto): Promise<WorkshopView> {
    return this.workshop.change(seen, dto);
  }

  @Get('labour-rates')
  @AllowReaders()
  @ApiOkResponse({ type: [LabourRateView] })
  labourRates(): Promise<LabourRateView[]> {
    return this.workshop.labourRates();
  }

  @Post('labour-rates')
  @Allow()
  @ApiCreatedResponse({ type: LabourRateView })
  addLabourRate(@Body() dto: LabourRateDto): Promise<LabourRateView> {
    return this.workshop.addLabourRate(dto);
  }

  @Get('vat-rates')
  @AllowReaders()
  @ApiOkResponse({ type: [VatRateView] })
  vatRates(): Promise<VatRateView[]> {
    return this.workshop.vatRates();
  }

  @Post('vat-rates')
  @Allow()
  @ApiCreatedResponse({ type: VatRateView })
  addVatRate(@Body() dto: VatRateDto): Promise<VatRateView> {
    return this.workshop.addVatRate(dto);
  }
}
