import { Body, Controller, Get, Param, ParseUUIDPipe, Put } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { LabelSettingsDto, LabelSettingsView } from './label-settings.dto';
import { WorkshopLabelSettingsDto, WorkshopLabelSettingsView } from './workshop-label-settings.dto';
import { LabelSettingsService } from './label-settings.service';

@ApiTags('labels')
@Controller()
export class LabelSettingsController {
  constructor(private readonly settings: LabelSettingsService) {}

  @Get('items/:id/label-settings')
  @AllowReaders()
  @ApiOkResponse({ type: LabelSettingsView })
  ofItem(@Param('id', ParseUUIDPipe) id: string): Promise<LabelSettingsView> {
    return this.settings.ofItem(id);
  }

  @Put('items/:id/label-settings')
  @Allow('maker')
  @ApiOkResponse({ type: LabelSettingsView })
  changeItem(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: LabelSettingsDto,
  ): Promise<LabelSettingsView> {
    return this.settings.changeItem(id, seen, dto);
  }

  @Get('workshop/label-settings')
  @AllowReaders()
  @ApiOkResponse({ type: WorkshopLabelSettingsView })
  ofWorkshop(): Promise<WorkshopLabelSettingsView> {
    return this.settings.ofWorkshop();
  }

  @Put('workshop/label-settings')
  @Allow()
  @ApiOkResponse({ type: WorkshopLabelSettingsView })
  changeWorkshop(
    @IfMatch() seen: number,
    @Body() dto: WorkshopLabelSettingsDto,
  ): Promise<WorkshopLabelSettingsView> {
    return this.settings.changeWorkshop(seen, dto);
  }
}
