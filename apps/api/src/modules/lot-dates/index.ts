export { LotDatesModule } from './lot-dates.module';
