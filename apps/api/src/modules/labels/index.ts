export { LabelsModule } from './labels.module';
