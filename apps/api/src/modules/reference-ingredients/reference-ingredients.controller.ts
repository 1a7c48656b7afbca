import { Body, Controller, Get, Param, ParseUUIDPipe, Put } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { IfMatch } from '../../platform/requests/if-match';
import { Allow, AllowReaders } from '../access';
import {
  ChooseGenericDto,
  GenericChoiceView,
  ReferenceIngredientsView,
} from './reference-ingredients.dto';
import { ReferenceIngredientsService } from './reference-ingredients.service';

@ApiTags('reference ingredients')
@Controller()
export class ReferenceIngredientsController {
  constructor(private readonly reference: ReferenceIngredientsService) {}

  @Get('reference-ingredients')
  @AllowReaders()
  @ApiOkResponse({ type: ReferenceIngredientsView })
  list(): ReferenceIngredientsView {
    return this.reference.list();
  }

  /** Lets a generic row stand in until an approved specification states a composition. */
  @Put('items/:id/generic-composition')
  @Allow('maker')
  @ApiOkResponse({ type: GenericChoiceView })
  choose(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: ChooseGenericDto,
  ): Promise<GenericChoiceView> {
    return this.reference.choose(id, seen, dto.key);
  }
}
