import type { Wording } from './wording';

export const database: Wording = {
  'A reversal must be the exact opposite of the draw it names.':
    'Une annulation doit être l’exact contraire du prélèvement qu’elle nomme.',
  'A lot can never be its own ancestor.': 'Un lot ne peut jamais être son propre ancêtre.',
  'A closed batch takes only corrections, each with its reason.':
    'Une fabrication close ne prend que des corrections, chacune avec sa raison.',
  'An approved specification never changes; write a new version.':
    'Une fiche technique approuvée ne change jamais ; écrivez-en une nouvelle version.',
  'A lot starts with nothing on hand; its movement adds it.':
    'Un lot commence sans stock ; son mouvement l’ajoute.',
  'A reversal must be the exact opposite of the movement it names.':
    'Une annulation doit être l’exact contraire du mouvement qu’elle nomme.',
  'A recipe version that has been used never changes.':
    'Une version de recette utilisée ne change jamais.',
  'A lot can only be made by an open batch.':
    'Un lot ne peut être fait que par une fabrication ouverte.',
  'A lot can be drawn once the batch that makes it is closed.':
    'Un lot ne peut être prélevé que lorsque la fabrication qui le fait est close.',
  'A hold is only ever released, once.': 'Un blocage ne peut qu’être levé, une seule fois.',
};
