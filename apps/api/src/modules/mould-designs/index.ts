export { MouldDesignsModule } from './mould-designs.module';
export { MouldDesignsService } from './mould-designs.service';
