export { ItemsModule } from './items.module';
export { ItemsService } from './items.service';
export { ITEM_KINDS, ItemView, UNITS } from './items.dto';
export { itemView } from './items.repository';
