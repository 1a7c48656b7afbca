export { SubstitutionsModule } from './substitutions.module';
