import { catalogue } from '../../shared/language/catalogue';

export const partsMessages = catalogue('parts', {
  title: ['Parts of this making', 'Parties de cet ensemble'],
  sum: ['{{made}} made of {{planned}} planned', '{{made}} faits sur {{planned}} prévus'],
  sumAlone: ['{{made}} made so far', '{{made}} faits jusqu’ici'],
  missing: [
    '{{missing}} of what was planned comes from no part. Open another part for it, or make do with less.',
    '{{missing}} de ce qui était prévu ne vient d’aucune partie. Ouvrez une autre partie, ou contentez-vous de moins.',
  ],
  missingClosed: [
    '{{missing}} of what was planned comes from no part. The first part is closed: start another batch for it.',
    '{{missing}} de ce qui était prévu ne vient d’aucune partie. La première partie est close : commencez une autre fabrication.',
  ],
  missingPacked: [
    '{{missing}} of what was planned is in no part. Start another packing for it, or make do with less.',
    '{{missing}} de ce qui était prévu n’est dans aucune partie. Commencez un autre emballage, ou contentez-vous de moins.',
  ],
  here: ['this part', 'cette partie'],
  made: ['made', 'fait'],
  cook: ['Cook another part', 'Cuire une autre partie'],
  cast: ['Cast another part', 'Mouler une autre partie'],
  lead: [
    'Another pot or go of the same recipe, weighed in and finished on its own, with its own lot. The first part keeps what is left of its own plan.',
    'Une autre casserole ou un autre passage de la même recette, pesé et terminé à part, avec son propre lot. La première partie garde ce qui reste de sa quantité prévue.',
  ],
  headKeeps: ['The first part has {{own}} planned.', 'La première partie a {{own}} de prévu.'],
  headDrawn: [
    'Goods were weighed into the first part already. If they are too much for what it keeps, put some back.',
    'Des matières ont déjà été versées dans la première partie. S’il y en a trop pour ce qu’elle garde, remettez-en.',
  ],
  share: ['How much in this part', 'Quelle quantité dans cette partie'],
  label: ['Part of {{quantity}} of {{batch}}', 'Partie de {{quantity}} de {{batch}}'],
});
