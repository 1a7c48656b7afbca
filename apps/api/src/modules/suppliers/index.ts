export { SuppliersModule } from './suppliers.module';
export { SuppliersService } from './suppliers.service';
