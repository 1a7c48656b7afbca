import { catalogue } from '../language/catalogue';

export const pickerMessages = catalogue('pickers', {
  item: ['Item', 'Article'],
  supplier: ['Supplier', 'Fournisseur'],
  customer: ['Customer', 'Client'],
  place: ['Place', 'Lieu'],
  choose: ['Choose…', 'Choisir…'],
  nothing: ['Nothing by that name', 'Aucun résultat'],
  none: ['none', 'aucun'],
});
