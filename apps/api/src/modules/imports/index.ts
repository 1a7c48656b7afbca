export { ImportsModule } from './imports.module';
