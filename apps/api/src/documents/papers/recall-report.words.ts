import type { Translated } from '../kit/language';

interface RecallReportWords {
  readonly title: string;
  readonly because: string;
  readonly frozen: string;
  readonly closed: string;
  readonly notYet: string;
  readonly conclusion: string;
  readonly result: string;
  readonly distributed: string;
  readonly recovered: string;
  readonly outstanding: string;
  readonly nothingSent: string;
  readonly notHeardFrom: string;
  readonly overRecovered: string;
  readonly boxes: string;
  readonly pieces: string;
  readonly lotsInScope: string;
  readonly excluded: string;
  readonly excludedNone: string;
  readonly why: string;
  readonly changes: string;
  readonly changesNone: string;
  readonly notHeld: string;
  readonly notHeldNone: string;
  readonly rehearsalHolds: string;
  readonly steps: string;
  readonly step: string;
  readonly at: string;
  readonly after: string;
  readonly person: string;
  readonly nobody: string;
  readonly customer: string;
  readonly theCounter: string;
  readonly stepOf: Readonly<Record<string, string>>;
  readonly interim: string;
}

export const RECALL_REPORT_WORDS: Translated<RecallReportWords> = {
  en: {
    title: 'Recall report',
    because: 'Opened from',
    frozen: 'Scope frozen',
    closed: 'Closed',
    notYet: 'not yet',
    conclusion: 'Found, and changed because of it',
    result: 'What came of it',
    distributed: 'Had been distributed',
    recovered: 'Recovered',
    outstanding: 'Still outstanding',
    nothingSent: 'nothing had been distributed',
    notHeardFrom: 'Nothing came back from',
    overRecovered: 'More came back than went out: look again',
    boxes: 'Boxes',
    pieces: 'Loose pieces',
    lotsInScope: 'Lots in the scope',
    excluded: 'Taken out of the scope by a person',
    excludedNone: 'No lot was taken out.',
    why: 'Why',
    changes: 'Learned after the scope was frozen',
    changesNone: 'Nothing.',
    notHeld: 'Here and not on hold',
    notHeldNone: 'Everything here is on hold.',
    rehearsalHolds: 'A rehearsal holds nothing.',
    steps: 'Step by step',
    step: 'Step',
    at: 'At',
    after: 'Minutes from opening',
    person: 'Person',
    nobody: 'nobody',
    customer: 'Customer',
    theCounter: 'the counter',
    stepOf: {
      opened: 'case opened',
      frozen: 'scope frozen',
      held: 'lots held',
      list_printed: 'list printed',
      notice_printed: 'notice printed',
      customer_told: 'customer told',
      recovered: 'goods recovered',
      note: 'note',
      closed: 'case closed',
    },
    interim: 'This case is still open: the figures are those of now and will change.',
  },
  fr: {
    title: 'Rapport de rappel',
    because: 'Ouvert à partir de',
    frozen: 'Périmètre figé',
    closed: 'Clos',
    notYet: 'pas encore',
    conclusion: 'Constaté, et changé en conséquence',
    result: 'Résultat',
    distributed: 'Avait été distribué',
    recovered: 'Récupéré',
    outstanding: 'Encore dehors',
    nothingSent: 'rien n’avait été distribué',
    notHeardFrom: 'Rien n’est revenu de',
    overRecovered: 'Revenu plus qu’expédié : à revoir',
    boxes: 'Boîtes',
    pieces: 'Pièces en vrac',
    lotsInScope: 'Lots concernés',
    excluded: 'Retiré du périmètre par une personne',
    excludedNone: 'Aucun lot retiré.',
    why: 'Motif',
    changes: 'Appris après que le périmètre a été figé',
    changesNone: 'Rien.',
    notHeld: 'Ici et non bloqué',
    notHeldNone: 'Tout ce qui est ici est bloqué.',
    rehearsalHolds: 'Un exercice ne bloque rien.',
    steps: 'Étape par étape',
    step: 'Étape',
    at: 'À',
    after: 'Minutes depuis l’ouverture',
    person: 'Personne',
    nobody: 'personne',
    customer: 'Client',
    theCounter: 'comptoir',
    stepOf: {
      opened: 'dossier ouvert',
      frozen: 'périmètre figé',
      held: 'lots bloqués',
      list_printed: 'liste imprimée',
      notice_printed: 'avis imprimé',
      customer_told: 'client averti',
      recovered: 'marchandise récupérée',
      note: 'note',
      closed: 'dossier clos',
    },
    interim: 'Ce dossier est encore ouvert : les chiffres sont ceux de maintenant et changeront.',
  },
};
