import { Global, Module } from '@nestjs/common';
import { Substitutes } from '../batches';
import { AcceptedSubstitutes } from './accepted-substitutes';
import { SubstitutionsController } from './substitutions.controller';
import { SubstitutionsService } from './substitutions.service';

/** Global, because batches asks for `Substitutes` and can't import the slice that gives it. */
@Global()
@Module({
  controllers: [SubstitutionsController],
  providers: [SubstitutionsService, { provide: Substitutes, useClass: AcceptedSubstitutes }],
  exports: [Substitutes],
})
export class SubstitutionsModule {}
