export { MetersModule } from './meters.module';
export { loadUncertainties } from './uncertainty.queries';
