export { CustomersModule } from './customers.module';
export { CustomersService } from './customers.service';
