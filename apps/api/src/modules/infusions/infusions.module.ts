import { Module } from '@nestjs/common';
import { InfusionsController } from './infusions.controller';
import { InfusionsService } from './infusions.service';

@Module({ controllers: [InfusionsController], providers: [InfusionsService] })
export class InfusionsModule {}
