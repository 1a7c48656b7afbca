export { ReferenceIngredientsModule } from './reference-ingredients.module';
