import { Module } from '@nestjs/common';
import { LotDatesController } from './lot-dates.controller';
import { LotDatesService } from './lot-dates.service';

@Module({ controllers: [LotDatesController], providers: [LotDatesService] })
export class LotDatesModule {}
