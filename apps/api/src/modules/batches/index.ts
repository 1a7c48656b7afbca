export { BatchesModule } from './batches.module';
export { BatchesService } from './batches.service';
export { bookDraw, endBatch } from './bookings.repository';
export { loadContents, costOf, massOf, type Content } from './contents.queries';
export { makeLots, type LifeRule, type LotToMake, type MadeLot } from './make-lots';
export { readPlan, type BatchPlan } from './open-batch';
export { showBatch } from './show-batch';
export { BatchView } from './batches.view';
export { openBatch } from './start-batch';
