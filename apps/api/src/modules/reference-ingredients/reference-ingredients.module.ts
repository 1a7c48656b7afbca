import { Module } from '@nestjs/common';
import { ReferenceIngredientsController } from './reference-ingredients.controller';
import { ReferenceIngredientsService } from './reference-ingredients.service';

@Module({
  controllers: [ReferenceIngredientsController],
  providers: [ReferenceIngredientsService],
})
export class ReferenceIngredientsModule {}
