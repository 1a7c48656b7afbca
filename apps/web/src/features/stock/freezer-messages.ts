import { catalogue } from '../../shared/language/catalogue';

export const freezerMessages = catalogue('freezer', {
  freeze: ['Into the freezer', 'Mettre au congélateur'],
  thaw: ['Out of the freezer', 'Sortir du congélateur'],
  freezeTitle: ['Lot {{code}} goes into the freezer', 'Le lot {{code}} va au congélateur'],
  thawTitle: ['Lot {{code}} comes out of the freezer', 'Le lot {{code}} sort du congélateur'],
  freezeLead: [
    'The recipe must say how long it keeps after thawing. While frozen its date stands still only as far as the recipe allows.',
    'La recette doit dire combien de temps il se garde après décongélation. Congelé, sa date ne s’arrête que dans les limites de la recette.',
  ],
  thawLead: [
    'From this day the days after thawing count. What was thawed is not frozen again.',
    'À partir de ce jour comptent les jours après décongélation. Un produit décongelé ne se recongèle pas.',
  ],
  on: ['On', 'Le'],
  freezeLabel: ['Lot {{code}} frozen', 'Lot {{code}} congelé'],
  thawLabel: ['Lot {{code}} thawed', 'Lot {{code}} décongelé'],
  frozen: ['in the freezer since {{day}}', 'au congélateur depuis le {{day}}'],
  thawed: ['thawed {{day}}', 'décongelé le {{day}}'],
});
