import { catalogue } from '../../shared/language/catalogue';

export const correctMessages = catalogue('corrections', {
  correct: ['Put right', 'Rectifier'],
  title: ['Put {{batch}} right', 'Rectifier {{batch}}'],
  markWrong: ['Mark as wrong', 'Marquer comme faux'],
  markWrongOf: ['Mark as wrong: {{what}}', 'Marquer comme faux : {{what}}'],
  wrongTitle: ['{{what}} is wrong', '{{what}} : c’est faux'],
  wrongLabel: ['{{what}} of {{batch}} marked as wrong', '{{what}} de {{batch}} marqué comme faux'],
  isWrong: ['marked as wrong: {{reason}}', 'marqué comme faux : {{reason}}'],
  takenBack: ['taken back: {{reason}}', 'repris : {{reason}}'],
  takenBackCaution: [
    'Destroy every label and tag with this code.',
    'Détruisez toute étiquette portant ce code.',
  ],
  readingCaution: [
    'The reading stays to be seen. Take it again: a value outside its limits holds what is made until the check is read again within them.',
    'Le relevé reste visible. Refaites-le : une valeur hors limites bloque ce qui est fait tant que le contrôle n’a pas été relu dans les limites.',
  ],
  trayCaution: [
    'The tray is free again, and no search for it leads to this batch any more.',
    'La plaque est de nouveau libre, et aucune recherche sur elle ne mène plus à cette fabrication.',
  ],
  lead: [
    'Nothing is crossed out: what was wrong is taken back by an opposite entry, and what is right is booked beside it. Dates, allergens, cost and trace of everything made of it follow.',
    'Rien n’est effacé : l’erreur est reprise par une écriture contraire, et le juste est inscrit à côté. Dates, allergènes, coût et traçabilité de tout ce qui en est fait suivent.',
  ],
  takeBack: ['Weighed in wrongly', 'Versé par erreur'],
  lossesBack: ['Losses written wrongly', 'Pertes notées par erreur'],
  right: ['What is right instead', 'Ce qui est juste'],
  addDraw: ['Add a weighing', 'Ajouter une pesée'],
  addLoss: ['Add a loss', 'Ajouter une perte'],
  lot: ['Lot', 'Lot'],
  role: ['As', 'Comme'],
  roleOfRecipe: ['as the recipe says', 'selon la recette'],
  quantity: ['Quantity in the lot’s unit', 'Quantité dans l’unité du lot'],
  lossKind: ['Kind', 'Type'],
  mass: ['Weight', 'Poids'],
  remove: ['Remove', 'Retirer'],
  label: ['Correction of {{batch}}', 'Rectification de {{batch}}'],
  nothing: [
    'Tick what was wrong, or add what is missing.',
    'Cochez ce qui était faux, ou ajoutez ce qui manque.',
  ],
  ownCaution: [
    'Labels already printed do not change by themselves: compare them afterwards.',
    'Les étiquettes déjà imprimées ne changent pas d’elles-mêmes : comparez-les ensuite.',
  ],
});
