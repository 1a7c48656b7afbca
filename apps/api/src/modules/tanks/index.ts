export { TanksModule } from './tanks.module';
export { TanksService } from './tanks.service';
