import { Body, Controller, Get, Param, ParseUUIDPipe, Post, Put } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Text } from '../../platform/dto';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import { CreateSpecificationDto, SpecificationDto, SpecificationView } from './specifications.dto';
import { SpecificationsService } from './specifications.service';

class WithdrawSpecificationDto {
  @Text({ max: 500 })
  reason: string;
}

@ApiTags('specifications')
@Controller('items/:itemId/specifications')
export class SpecificationsController {
  constructor(private readonly specifications: SpecificationsService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: [SpecificationView] })
  list(@Param('itemId', ParseUUIDPipe) itemId: string): Promise<SpecificationView[]> {
    return this.specifications.list(itemId);
  }

  @Get(':id')
  @AllowReaders()
  @ApiOkResponse({ type: SpecificationView })
  get(
    @Param('itemId', ParseUUIDPipe) itemId: string,
    @Param('id', ParseUUIDPipe) id: string,
  ): Promise<SpecificationView> {
    return this.specifications.get(itemId, id);
  }

  @Post()
  @Allow('maker')
  @ApiCreatedResponse({ type: SpecificationView })
  create(
    @Param('itemId', ParseUUIDPipe) itemId: string,
    @Body() dto: CreateSpecificationDto,
  ): Promise<SpecificationView> {
    return this.specifications.create(itemId, dto);
  }

  @Put(':id')
  @Allow('maker')
  @ApiOkResponse({ type: SpecificationView })
  change(
    @Param('itemId', ParseUUIDPipe) itemId: string,
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: SpecificationDto,
  ): Promise<SpecificationView> {
    return this.specifications.change(itemId, id, seen, dto);
  }

  @Post(':id/approve')
  @Allow()
  @ApiCreatedResponse({ type: SpecificationView })
  approve(
    @Param('itemId', ParseUUIDPipe) itemId: string,
    @Param('id', ParseUUIDPipe) id: string,
  ): Promise<SpecificationView> {
    return this.specifications.approve(itemId, id);
  }

  @Post(':id/withdraw')
  @Allow()
  @ApiCreatedResponse({ type: SpecificationView })
  withdraw(
    @Param('itemId', ParseUUIDPipe) itemId: string,
    @Param('id', ParseUUIDPipe) id: string,
    @Body() dto: WithdrawSpecificationDto,
  ): Promise<SpecificationView> {
    return this.specifications.withdraw(itemId, id, dto.reason);
  }
}
