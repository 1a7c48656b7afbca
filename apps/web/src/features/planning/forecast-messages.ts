import { catalogue } from '../../shared/language/catalogue';

export const forecastMessages = catalogue('forecast', {
  title: ['Counter forecast', 'Prévision du comptoir'],
  lead: [
    'What the counter will probably sell: an ordinary day × the day of the week × the season.',
    'Ce que le comptoir vendra sans doute : un jour ordinaire × le jour de la semaine × la saison.',
  ],
  what: ['What', 'Quoi'],
  from: ['From', 'À partir du'],
  howLong: ['How long', 'Durée'],
  twoWeeks: ['2 weeks', '2 semaines'],
  fourWeeks: ['4 weeks', '4 semaines'],
  twelveWeeks: ['12 weeks', '12 semaines'],
  pickFirst: [
    'Choose a box or a piece to see what the counter sells of it.',
    'Choisissez une boîte ou un bonbon pour voir ce qu’en vend le comptoir.',
  ],
  level: ['An ordinary open day', 'Un jour ordinaire d’ouverture'],
  total: ['In all these days', 'Sur tous ces jours'],
  observed: ['Open days it rests on', 'Jours d’ouverture observés'],
  thin: [
    'Too few open days were seen for a forecast: take it as a guess.',
    'Trop peu de jours d’ouverture observés pour une prévision : c’est une supposition.',
  ],
  nothingSold: [
    'The counter has sold none of it yet, so nothing can be foretold.',
    'Le comptoir n’en a encore rien vendu : rien ne peut être prévu.',
  ],
  noDays: [
    'The counter is closed on all of these days.',
    'Le comptoir est fermé tous ces jours-là.',
  ],
  picture: ['Expected at the counter', 'Ventes attendues au comptoir'],
  day: ['Day', 'Jour'],
  expected: ['Expected', 'Attendu'],
  season: ['Season', 'Saison'],
  ordinary: ['ordinary', 'ordinaire'],
  rules: ['Seasons and counter days', 'Saisons et jours d’ouverture'],
  planned: [
    'A plan counts these in for the days set under “How we plan”: {{days}}.',
    'Un planning en tient compte pour le nombre de jours réglé dans « Nos règles » : {{days}}.',
  ],
  notPlanned: [
    'Plans are for orders only now. Under “How we plan”, say for how many days counter sales are to be planned.',
    'Les plannings ne suivent que les commandes. Dans « Nos règles », dites pour combien de jours prévoir les ventes au comptoir.',
  ],
});
