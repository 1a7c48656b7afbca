import type { Translated } from '../kit/language';

interface TraceWords {
  readonly title: string;
  readonly asked: string;
  readonly roots: string;
  readonly behind: string;
  readonly ahead: string;
  readonly sent: string;
  readonly balance: string;
  readonly lot: string;
  readonly what: string;
  readonly origin: string;
  readonly made: string;
  readonly onHand: string;
  readonly shared: string;
  readonly held: string;
  readonly counter: string;
  readonly whom: string;
  readonly when: string;
  readonly quantity: string;
  readonly percent: string;
  readonly source: string;
  readonly accounted: string;
  readonly none: string;
}

export const TRACE_WORDS: Translated<TraceWords> = {
  en: {
    title: 'Trace report',
    asked: 'As of',
    roots: 'What was asked',
    behind: 'Behind it: what went in',
    ahead: 'Ahead of it: what it went into',
    sent: 'Where it was sent',
    balance: 'Mass balance',
    lot: 'Lot',
    what: 'What',
    origin: 'From',
    made: 'Made or received',
    onHand: 'On hand',
    shared: 'Shared, g',
    held: 'on hold',
    counter: 'over the counter',
    whom: 'To',
    when: 'Sent',
    quantity: 'Quantity',
    percent: '%',
    source: 'Source',
    accounted: 'Accounted for',
    none: 'None.',
  },
  fr: {
    title: 'Rapport de traçabilité',
    asked: 'Au',
    roots: 'Ce qui est demandé',
    behind: 'En amont : ce qui y est entré',
    ahead: 'En aval : où c’est entré',
    sent: 'Où c’est parti',
    balance: 'Bilan de masse',
    lot: 'Lot',
    what: 'Quoi',
    origin: 'De',
    made: 'Fait ou reçu',
    onHand: 'En stock',
    shared: 'Partagé, g',
    held: 'bloqué',
    counter: 'au comptoir',
    whom: 'À',
    when: 'Envoyé',
    quantity: 'Quantité',
    percent: '%',
    source: 'Source',
    accounted: 'Justifié',
    none: 'Aucun.',
  },
};
