import { catalogue } from '../../shared/language/catalogue';

export const packingMessages = catalogue('packing', {
  title: ['Packing', 'Emballage'],
  lead: [
    'Boxes are filled from pieces, labelled, and wait here to go out.',
    'Les boîtes se garnissent, s’étiquettent et attendent ici le départ.',
  ],
  start: ['Start packing', 'Commencer un emballage'],
  ready: ['Boxes and pieces that are ready', 'Boîtes et bonbons prêts'],
  split: [
    'When a piece lot changes on the way, the boxes become a lot of their own: a recall then stays small.',
    'Quand un lot de pièces change en cours, les boîtes forment un lot à part : un rappel reste petit.',
  ],
  matrix: ['Allergens for the counter', 'Allergènes pour le comptoir'],
  label: ['Label', 'Étiquette'],
});
