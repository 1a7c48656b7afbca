import { catalogue } from '../language/catalogue';

export const itemMessages = catalogue('items', {
  title: ['Ingredients and packaging', 'Ingrédients et emballages'],
  lead: [
    'What is bought in, and what the suppliers state of it.',
    'Ce qui s’achète, et ce que les fournisseurs en déclarent.',
  ],
  add: ['Add an item', 'Ajouter un article'],
  changeOf: ['Change {{name}}', 'Modifier {{name}}'],
  change: ['Change', 'Modifier'],
  name: ['Name', 'Nom'],
  kind: ['Kind', 'Type'],
  unit: ['Kept by', 'Compté en'],
  grams: ['weight (g)', 'poids (g)'],
  pieces: ['piece', 'pièce'],
  perishable: ['Perishable', 'Périssable'],
  capsDate: [
    'Its own date caps the date of what is made with it',
    'Sa date limite celle de ce qui en est fait',
  ],
  infusionOnly: [
    'Strained out again (tea, vanilla pod)',
    'Filtré ensuite (thé, gousse de vanille)',
  ],
  processingAid: ['Processing aid', 'Auxiliaire technologique'],
  warmest: ['Warmest on arrival', 'Le plus chaud à l’arrivée'],
  gtin: ['GTIN', 'GTIN'],
  storage: ['Storage conditions', 'Conditions de conservation'],
  nominal: ['Net weight of one', 'Poids net d’une unité'],
  vatClass: ['VAT class', 'Classe de TVA'],
  replacement: ['Replacement price per kg', 'Prix de remplacement par kg'],
  replacementEach: ['Replacement price each', 'Prix de remplacement l’unité'],
  note: ['Note', 'Remarque'],
  inUse: ['In use', 'Utilisé'],
  specifications: ['Specifications', 'Fiches techniques'],
  lots: ['Lots', 'Lots'],
  none: ['No items yet.', 'Aucun article.'],
});
