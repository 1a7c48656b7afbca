export { TemperingModule } from './tempering.module';
