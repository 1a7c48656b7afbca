import { catalogue } from '../../shared/language/catalogue';

export const foundMessages = catalogue('found', {
  title: ['Scanned', 'Scanné'],
  looking: ['Looking it up…', 'Recherche…'],
  unknown: ['Nothing here answers to “{{text}}”.', 'Rien ici ne répond à « {{text}} ».'],
  unknownHelp: [
    'Scan again, or type the code with care. A supplier’s carton can be taken in under Goods in.',
    'Scannez à nouveau, ou saisissez le code avec soin. Un carton de fournisseur se réceptionne sous Réception.',
  ],
  now: ['What can be done with it now', 'Ce qu’on peut en faire maintenant'],
  lots: ['Lots', 'Lots'],
  here: ['{{quantity}} here', '{{quantity}} ici'],
  takeIn: ['Take it in', 'Réceptionner'],
  open: ['Open', 'Ouvrir'],
  trace: ['Trace', 'Tracer'],
  recall: ['Open a recall', 'Ouvrir un rappel'],
  complain: ['Write a complaint down', 'Noter une réclamation'],
  label: ['Label', 'Étiquette'],
  dispatch: ['Send out', 'Expédier'],
  notNow: ['Not now: {{why}}', 'Pas maintenant : {{why}}'],
  receive: ['Take it in', 'Réceptionner'],
});
