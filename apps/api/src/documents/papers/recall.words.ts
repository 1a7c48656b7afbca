import type { Translated } from '../kit/language';

interface RecallWords {
  readonly listTitle: string;
  readonly noticeTitle: string;
  readonly rehearsal: string;
  readonly rehearsalNote: string;
  readonly reason: string;
  readonly opened: string;
  readonly asked: string;
  readonly lots: string;
  readonly lot: string;
  readonly what: string;
  readonly quantity: string;
  readonly date: string;
  readonly best_before: string;
  readonly use_by: string;
  readonly customers: string;
  readonly contact: string;
  readonly sent: string;
  readonly note: string;
  readonly told: string;
  readonly counter: string;
  readonly counterNote: string;
  readonly onHand: string;
  readonly place: string;
  readonly held: string;
  readonly yes: string;
  readonly no: string;
  readonly ended: string;
  readonly total: string;
  readonly none: string;
  readonly totals: string;
  readonly scopeTitle: string;
  readonly affected: string;
  readonly whyNotice: string;
  readonly whatToDo: string;
  readonly contactUs: string;
  readonly letterSubject: (code: string) => string;
  readonly letterOpening: string;
  readonly letterLots: string;
  readonly letterAsk: string;
  readonly letterReply: string;
  readonly soldOn: string;
  readonly stillThere: string;
  readonly destroyed: string;
  readonly signature: string;
  readonly changes: string;
  readonly change: string;
  readonly changeOf: Readonly<Record<'now-in-scope' | 'no-longer-in-scope' | 'quantity', string>>;
  readonly fieldOf: Readonly<Record<'onHand' | 'dispatched' | 'counter', string>>;
  readonly learnedLater: string;
  /** A kind of movement, or an open batch by its code. */
  readonly endOf: (what: string) => string;
}

const endWords =
  (words: Readonly<Record<string, string>>, openBatch: string) =>
  (what: string): string =>
    words[what] ?? what.replace('in open batch', openBatch);

export const RECALL_WORDS: Translated<RecallWords> = {
  en: {
    listTitle: 'Recall list',
    noticeTitle: 'Product recall',
    rehearsal: 'REHEARSAL',
    rehearsalNote: 'This is a rehearsal. Nobody outside the workshop is to be told.',
    reason: 'Reason',
    opened: 'Case opened',
    asked: 'Scope as of',
    lots: 'Lots in the scope',
    lot: 'Lot',
    what: 'What',
    quantity: 'Quantity',
    date: 'Date',
    best_before: 'best before',
    use_by: 'use by',
    customers: 'Sent to customers',
    contact: 'Reach them at',
    sent: 'Sent, by note',
    note: 'Note',
    told: 'Told',
    counter: 'Sold over the counter',
    counterNote: 'Buyers aren’t known by name: a notice at the door is the way to reach them.',
    onHand: 'Still here',
    place: 'Place',
    held: 'On hold',
    yes: 'yes',
    no: 'NO',
    ended: 'Used up, wasted or sampled',
    total: 'Total',
    none: 'None.',
    totals: 'In figures',
    scopeTitle: 'Where it went',
    affected: 'Products affected',
    whyNotice: 'Why',
    whatToDo: 'What to do',
    contactUs: 'Contact',
    letterSubject: (code) => `Recall ${code}: please stop selling these goods at once`,
    letterOpening: 'We have sent you goods that we now recall. The reason:',
    letterLots: 'According to our records you received:',
    letterAsk:
      'Take them out of sale at once and keep them apart. Tell your own customers if you have sold them on. Don’t throw anything away before we have spoken.',
    letterReply: 'Please send this part back to us today.',
    soldOn: 'Sold on',
    stillThere: 'Still with us',
    destroyed: 'Destroyed',
    signature: 'Name, date, signature',
    changes: 'Learned since: not in the scope as it was reviewed',
    change: 'Change',
    changeOf: {
      'now-in-scope': 'is now in the scope',
      'no-longer-in-scope': 'is no longer reached; it stays in the case',
      quantity: 'quantities changed',
    },
    fieldOf: { onHand: 'here', dispatched: 'sent', counter: 'over the counter' },
    learnedLater: 'learned later',
    endOf: endWords(
      { wasted: 'wasted', counted: 'count difference', sampled: 'sampled', returned: 'came back' },
      'in open batch',
    ),
  },
  fr: {
    listTitle: 'Liste de rappel',
    noticeTitle: 'Rappel de produits',
    rehearsal: 'EXERCICE',
    rehearsalNote: 'Ceci est un exercice. Personne hors de l’atelier ne doit être averti.',
    reason: 'Motif',
    opened: 'Dossier ouvert',
    asked: 'Périmètre au',
    lots: 'Lots concernés',
    lot: 'Lot',
    what: 'Quoi',
    quantity: 'Quantité',
    date: 'Date',
    best_before: 'de préférence avant',
    use_by: 'à consommer jusqu’au',
    customers: 'Envoyé aux clients',
    contact: 'Joindre',
    sent: 'Envoyé, selon bon',
    note: 'Bon',
    told: 'Averti',
    counter: 'Vendu au comptoir',
    counterNote: 'Les acheteurs ne sont pas connus : une affiche à la porte permet de les joindre.',
    onHand: 'Encore ici',
    place: 'Lieu',
    held: 'Bloqué',
    yes: 'oui',
    no: 'NON',
    ended: 'Employé, jeté ou prélevé',
    total: 'Total',
    none: 'Aucun.',
    totals: 'En chiffres',
    scopeTitle: 'Où c’est parti',
    affected: 'Produits concernés',
    whyNotice: 'Motif',
    whatToDo: 'Que faire',
    contactUs: 'Contact',
    letterSubject: (code) => `Rappel ${code} : cesser la vente immédiatement`,
    letterOpening: 'Nous vous avons livré des produits que nous rappelons. Motif :',
    letterLots: 'Selon nos registres, vous avez reçu :',
    letterAsk:
      'Retirez-les immédiatement de la vente et mettez-les à part. Avertissez vos clients si vous les avez revendus. Ne jetez rien avant de nous avoir parlé.',
    letterReply: 'Merci de nous retourner cette partie aujourd’hui.',
    soldOn: 'Revendu',
    stillThere: 'Encore chez nous',
    destroyed: 'Détruit',
    signature: 'Nom, date, signature',
    changes: 'Appris depuis : absent du périmètre vérifié',
    change: 'Changement',
    changeOf: {
      'now-in-scope': 'entre dans le périmètre',
      'no-longer-in-scope': 'n’est plus atteint ; il reste au dossier',
      quantity: 'quantités modifiées',
    },
    fieldOf: { onHand: 'ici', dispatched: 'expédié', counter: 'au comptoir' },
    learnedLater: 'appris depuis',
    endOf: endWords(
      { wasted: 'jeté', counted: 'écart de comptage', sampled: 'prélevé', returned: 'revenu' },
      'dans la fabrication ouverte',
    ),
  },
};
