import type { Wording } from './wording';

export const partsOfSentences: Wording = {
  '{0} {1} {2}, {3}': '{0} {1} {2}, {3}',
  'Batch {0} is {1}.': 'État de la fabrication {0} : {1}.',
  '{0}: {1} was {2}': '{0} : {1} à {2}',
  '1 piece': '1 pièce',
  '{0} pieces': '{0} pièces',
  '{0} pieces{1}': '{0} pièces{1}',
  'lot on dispatch {0}': 'lot de l’expédition {0}',
  '{0} (lot {1}, {2})': '{0} (lot {1}, {2})',
  'Tank {0}': 'Cuve {0}',
  'Tank {0} emptied': 'Cuve {0} vidée',
  'Recall {0}': 'Rappel {0}',
  'Recall {0}: {1}': 'Rappel {0} : {1}',
  'price on the {0} list for': 'prix du tarif {0} pour',
};
