export { ChangesModule } from './changes.module';
