import type { Wording } from './wording';

/** Events of a plan in a calendar, and what a scan found. */
export const planCalendar: Wording = {
  '{0}: plan': '{0} : planning',
  '{0} g': '{0} g',
  '{0} boxes': '{0} boîtes',
  '{0}, {1} trays': '{0}, plaques : {1}',
  'Cook {0}: {1}': 'Cuire {0} : {1}',
  'Cast {0}: {1}': 'Mouler {0} : {1}',
  'Pack {0}: {1}': 'Emballer {0} : {1}',
  'For {0}. Latest start {1}, ready {2}.': 'Pour : {0}. Début au plus tard le {1}, prêt le {2}.',
  'Order from {0}': 'Commander chez {0}',
  'whoever has it': 'qui en a',
  '{0}: {1}': '{0} : {1}',
  Goods: 'Marchandise',
  '{0}, lot {1}': '{0}, lot {1}',
  Counter: 'Comptoir',
};
