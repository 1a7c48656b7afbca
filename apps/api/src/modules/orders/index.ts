export { closeWhenSent, orderToSend } from './fulfil';
export { listOrders, sentByLine, sentOf, type StoredOrder } from './orders.repository';
export { OrdersModule } from './orders.module';
