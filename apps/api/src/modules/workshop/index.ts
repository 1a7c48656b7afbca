export { WorkshopModule } from './workshop.module';
export { loadWorkshop, WorkshopService } from './workshop.service';
export { LANGUAGES, MARKETS } from './workshop.dto';
