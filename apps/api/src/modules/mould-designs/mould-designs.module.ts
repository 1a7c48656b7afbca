import { Module } from '@nestjs/common';
import { MouldDesignsController } from './mould-designs.controller';
import { MouldDesignsService } from './mould-designs.service';

@Module({
  controllers: [MouldDesignsController],
  providers: [MouldDesignsService],
  exports: [MouldDesignsService],
})
export class MouldDesignsModule {}
