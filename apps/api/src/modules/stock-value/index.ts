export { StockValueModule } from './stock-value.module';
export { loadStock, type LotInStock } from './stock-value.queries';
