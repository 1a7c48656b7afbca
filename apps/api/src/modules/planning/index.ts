export { PlanningModule } from './planning.module';
