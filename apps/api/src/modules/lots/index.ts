export { AdjustmentsService } from './adjustments.service';
export { HoldsService } from './holds.service';
export { LotView } from './lots.dto';
export { LotsModule } from './lots.module';
export { LotsService, viewLot } from './lots.service';
