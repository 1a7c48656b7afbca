import { Module } from '@nestjs/common';
import { RecallsModule } from '../recalls';
import { ExportsController } from './exports.controller';
import { ExportsService } from './exports.service';

@Module({
  imports: [RecallsModule],
  controllers: [ExportsController],
  providers: [ExportsService],
})
export class ExportsModule {}
