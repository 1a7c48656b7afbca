import type { BalanceLine } from '../../domain/balance';
import type { LossKind } from '../../domain/scaling';
import { labelled } from '../kit/formats';
import type { PaperLanguage, Translated } from '../kit/language';

/** Sources and ends of a mass balance, and the kinds of loss that are noted beside an end. */
type Words = Readonly<Record<BalanceLine['kind'] | LossKind, string>>;

const BALANCE_WORDS: Translated<Words> = {
  en: {
    received: 'Received',
    made: 'Made',
    'returned-by-customer': 'Returned by a customer',
    'count-surplus': 'Surplus found at a count',
    gain: 'Gain',
    dispatched: 'Sent to customers',
    counter: 'Sold over the counter',
    'on-hand': 'On hand',
    'open-batch': 'In an open batch',
    wasted: 'Thrown away',
    sampled: 'Taken as a sample',
    'returned-to-supplier': 'Returned to the supplier',
    used: 'Used',
    loss: 'Lost',
    'count-shortage': 'Missing at a count',
    shortfall: 'Short in a batch',
    'inside-asked-lot': 'Inside another lot that was asked',
    unexplained: 'Unexplained',
    steam: 'steam',
    held_back: 'held back when straining',
    scrapings: 'scrapings',
    rejects: 'rejects',
    samples: 'samples',
    other: 'other',
  },
  fr: {
    received: 'Reçu',
    made: 'Fabriqué',
    'returned-by-customer': 'Rendu par un client',
    'count-surplus': 'Excédent trouvé à l’inventaire',
    gain: 'Gain',
    dispatched: 'Envoyé aux clients',
    counter: 'Vendu au comptoir',
    'on-hand': 'En stock',
    'open-batch': 'Dans une fabrication ouverte',
    wasted: 'Jeté',
    sampled: 'Prélevé comme échantillon',
    'returned-to-supplier': 'Rendu au fournisseur',
    used: 'Utilisé',
    loss: 'Perdu',
    'count-shortage': 'Manquant à l’inventaire',
    shortfall: 'Manquant dans une fabrication',
    'inside-asked-lot': 'Dans un autre lot demandé',
    unexplained: 'Inexpliqué',
    steam: 'vapeur',
    held_back: 'retenu au tamis',
    scrapings: 'raclures',
    rejects: 'rebuts',
    samples: 'échantillons',
    other: 'autre',
  },
};

/** A line of the balance in words; a note that is no word of ours is a code, and stays. */
export const balanceWords = (
  kind: string,
  note: string | null,
  language: PaperLanguage,
): string => {
  const words: Readonly<Partial<Record<string, string>>> = BALANCE_WORDS[language];
  const what = words[kind] ?? kind;
  return note === null ? what : labelled(what, words[note] ?? note, language);
};
