export { DeliveriesModule } from './deliveries.module';
export { DeliveriesService } from './deliveries.service';
