import { Module } from '@nestjs/common';
import { ChargesService } from './charges.service';
import { EmptyingsService } from './emptyings.service';
import { TanksController } from './tanks.controller';
import { TanksService } from './tanks.service';

@Module({
  controllers: [TanksController],
  providers: [TanksService, ChargesService, EmptyingsService],
  exports: [TanksService],
})
export class TanksModule {}
