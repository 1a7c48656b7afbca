import { Module } from '@nestjs/common';
import { MouldsController } from './moulds.controller';
import { MouldsService } from './moulds.service';

@Module({ controllers: [MouldsController], providers: [MouldsService], exports: [MouldsService] })
export class MouldsModule {}
