export { MouldingModule } from './moulding.module';
