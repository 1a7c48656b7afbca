import { catalogue } from '../language/catalogue';

export const startMessages = catalogue('starts', {
  startsFrom: ['Starts from', 'Part de'],
  text: ['a lot, a box, any code', 'un lot, une boîte, un code'],
  mould: ['a mould tray', 'une plaque'],
  'mould-design': ['all trays of a mould', 'toutes les plaques d’un moule'],
  supplier: ['a supplier', 'un fournisseur'],
  item: ['every lot of an item', 'tous les lots d’un article'],
  tank: ['a tank and time', 'une cuve et un moment'],
  place: ['a place and time', 'un lieu et un moment'],
  delivery: ['a delivery', 'une livraison'],
  specification: ['a specification', 'une fiche technique'],
  'recipe-version': ['a recipe version', 'une version de recette'],
  reading: ['a reading', 'un relevé'],
  lot: ['a lot', 'un lot'],
  traceThis: ['Where it went', 'Où c’est allé'],
  code: ['Code', 'Code'],
  tankField: ['Tank', 'Cuve'],
  designField: ['Mould', 'Moule'],
  from: ['From', 'Du'],
  to: ['Until', 'Au'],
  foundOn: ['Damage found on', 'Dommage constaté le'],
  workshopTime: [
    'Days are the workshop’s own, from midnight to midnight.',
    'Les jours sont ceux de l’atelier, de minuit à minuit.',
  ],
});
