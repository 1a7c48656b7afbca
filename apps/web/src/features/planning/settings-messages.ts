import { catalogue } from '../../shared/language/catalogue';

export const planSettingsMessages = catalogue('plan-settings', {
  title: ['How we plan', 'Nos règles de planning'],
  lead: [
    'Days, hours and moulds that a plan may count on, and what the counter sells. A plan made from now on follows them.',
    'Jours, heures et moules sur lesquels un planning peut compter, et ce que vend le comptoir. Tout nouveau planning les suit.',
  ],
  saved: [
    'Saved. Make a new plan to see what it changes.',
    'Enregistré. Faites un nouveau planning pour voir ce que cela change.',
  ],
  toPlan: ['To the plan', 'Vers le planning'],
  readOnly: [
    'The owner or a maker changes these.',
    'Le propriétaire ou la fabrication les change.',
  ],
  week: ['The week', 'La semaine'],
  workDays: ['Days on which we work', 'Jours travaillés'],
  horizon: ['How far ahead to plan', 'Horizon du planning'],
  days: ['days', 'jours'],
  people: ['Working time of everybody together, a day', 'Temps de travail de tous, par jour'],
  minutes: ['min', 'min'],
  asHours: ['{{hours}} hours', '{{hours}} heures'],
  extraHour: [
    'What an hour beyond that costs (empty: not weighed)',
    'Coût d’une heure de plus (vide : non compté)',
  ],
  reservation: [
    'A started batch keeps its lots for',
    'Une fabrication commencée garde ses lots pendant',
  ],
  hours: ['hours', 'heures'],
  tools: ['Moulds and tanks', 'Moules et cuves'],
  mouldDays: [
    'Days a cast keeps its mould, its own day included',
    'Jours pendant lesquels un moulage garde son moule, jour même compris',
  ],
  mouldPrice: [
    'What one more tray costs (empty: not weighed)',
    'Coût d’une plaque de plus (vide : non compté)',
  ],
  tankDay: [
    'A melting tank works, a day (0: not planned)',
    'Une cuve travaille, par jour (0 : non planifié)',
  ],
  tankTray: ['Tank time for one tray', 'Temps de cuve par plaque'],
  special: ['Days unlike the others', 'Jours à part'],
  specialLead: [
    'A holiday has 0 minutes; a long Saturday before a feast has more than none.',
    'Un jour férié a 0 minute ; un samedi travaillé avant une fête en a plus.',
  ],
  day: ['Day', 'Jour'],
  addDay: ['Add a day', 'Ajouter un jour'],
  counter: ['Counter', 'Comptoir'],
  counterDays: ['Days on which the counter sells', 'Jours d’ouverture du comptoir'],
  forecastDays: [
    'Counter sales to plan for (0: orders only)',
    'Ventes au comptoir à prévoir (0 : commandes seules)',
  ],
  seasons: ['Seasons', 'Saisons'],
  seasonsLead: [
    'When more or less is sold: 2 is twice an ordinary day, 0.5 half of one. Past seasons count too: they keep last year’s feast out of an ordinary day.',
    'Quand on vend plus ou moins : 2 est le double d’un jour ordinaire, 0,5 la moitié. Les saisons passées comptent aussi : elles retirent la fête de l’an dernier d’un jour ordinaire.',
  ],
  name: ['Name', 'Nom'],
  from: ['From', 'Du'],
  to: ['To', 'Au'],
  factor: ['Times an ordinary day', 'Fois un jour ordinaire'],
  addSeason: ['Add a season', 'Ajouter une saison'],
  remove: ['Remove', 'Retirer'],
  removeOf: ['Remove {{name}}', 'Retirer {{name}}'],
  save: ['Save', 'Enregistrer'],
  noneYet: ['None.', 'Aucun.'],
});
