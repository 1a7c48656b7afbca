import { Module } from '@nestjs/common';
import { TemperingController } from './tempering.controller';
import { TemperingService } from './tempering.service';

@Module({ controllers: [TemperingController], providers: [TemperingService] })
export class TemperingModule {}
