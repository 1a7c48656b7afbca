export { ComplaintsModule } from './complaints.module';
