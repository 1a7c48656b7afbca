import { Module } from '@nestjs/common';
import { LongWorkController } from './long-work.controller';
import { LongWorkService } from './long-work.service';

@Module({ controllers: [LongWorkController], providers: [LongWorkService] })
export class LongWorkModule {}
