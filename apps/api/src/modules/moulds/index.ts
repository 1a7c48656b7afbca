export { MouldsModule } from './moulds.module';
export { MouldsService } from './moulds.service';
