export { ExportsModule } from './exports.module';
