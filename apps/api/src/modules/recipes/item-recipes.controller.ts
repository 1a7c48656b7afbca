import { Body, Controller, Get, Param, ParseUUIDPipe, Post } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { Allow, AllowReaders } from '../access';
import { RecipeVersionDto } from './recipes.dto';
import { RecipesService } from './recipes.service';
import { RecipeVersionView } from './recipes.view';

@ApiTags('recipes')
@Controller('items/:itemId/recipes')
export class ItemRecipesController {
  constructor(private readonly recipes: RecipesService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: [RecipeVersionView] })
  list(@Param('itemId', ParseUUIDPipe) itemId: string): Promise<RecipeVersionView[]> {
    return this.recipes.versionsOf(itemId);
  }

  @Post()
  @Allow('maker')
  @ApiCreatedResponse({ type: RecipeVersionView })
  create(
    @Param('itemId', ParseUUIDPipe) itemId: string,
    @Body() dto: RecipeVersionDto,
  ): Promise<RecipeVersionView> {
    return this.recipes.create(itemId, dto);
  }
}
