export { RecallsModule } from './recalls.module';
export { RecallsService } from './recalls.service';
export { RecallView } from './recalls.dto';
