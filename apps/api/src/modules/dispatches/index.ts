export { DispatchesModule } from './dispatches.module';
export { DispatchesService } from './dispatches.service';
