import { catalogue } from '../../shared/language/catalogue';

export const buyingMessages = catalogue('buying', {
  title: ['Buying', 'Achats'],
  lead: [
    'From whom each thing is bought, in what packs, and how long it takes. Plans write their shopping list with it.',
    'Chez qui chaque chose s’achète, par quels colis, en combien de temps. Les plannings en tirent leur liste d’achats.',
  ],
  terms: ['From whom, in what packs', 'Chez qui, par quels colis'],
  add: ['Add a thing that is bought', 'Ajouter une chose achetée'],
  termOf: ['How {{name}} is bought', 'Achat de {{name}}'],
  termNew: ['How a thing is bought', 'Achat d’un article'],
  item: ['Item', 'Article'],
  supplier: ['Supplier', 'Fournisseur'],
  leadTime: ['From order to delivery', 'De la commande à la livraison'],
  days_one: ['{{count}} day', '{{count}} jour'],
  days_other: ['{{count}} days', '{{count}} jours'],
  daysUnit: ['days', 'jours'],
  pack: ['One pack holds', 'Un colis contient'],
  packHint: [
    'Leave it empty when any quantity can be ordered.',
    'Laissez vide si l’on peut commander n’importe quelle quantité.',
  ],
  anyQuantity: ['any quantity', 'toute quantité'],
  change: ['Change', 'Modifier'],
  changeOf: ['Change {{name}}', 'Modifier {{name}}'],
  none: [
    'Nothing is written yet. Until it is, a plan buys from whoever brought a thing last, in any quantity, and guesses the delivery time.',
    'Rien n’est noté. En attendant, un planning achète chez le dernier livreur, en toute quantité, et suppose le délai.',
  ],
  unwritten: ['Bought, but nothing written yet', 'Achetés, mais rien de noté'],
  unwrittenLead: [
    'A plan buys these from whoever brought them last, in any quantity, and guesses the delivery time. Tap one to write it down.',
    'Un planning les achète chez le dernier livreur, en toute quantité, et suppose le délai. Touchez-en un pour noter.',
  ],
  writeOf: ['{{name}}: write down how it is bought', '{{name}}, noter comment on l’achète'],
  minimums: ['Least order', 'Commande minimale'],
  minimumsLead: [
    'What an order has to come to before a supplier delivers.',
    'Montant à partir duquel un fournisseur livre.',
  ],
  minimumOf: ['Least order at {{name}}', 'Commande minimale chez {{name}}'],
  amount: ['At least', 'Au moins'],
  noMinimum: ['none written', 'rien de noté'],
});
