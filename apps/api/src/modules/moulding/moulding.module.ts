import { Module } from '@nestjs/common';
import { MouldingController } from './moulding.controller';
import { MouldingService } from './moulding.service';

@Module({ controllers: [MouldingController], providers: [MouldingService] })
export class MouldingModule {}
