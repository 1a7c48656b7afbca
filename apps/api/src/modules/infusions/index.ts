export { InfusionsModule } from './infusions.module';
