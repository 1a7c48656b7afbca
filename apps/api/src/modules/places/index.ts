export { PlacesModule } from './places.module';
export { PlacesService } from './places.service';
