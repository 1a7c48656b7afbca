import type { Translated } from '../kit/language';

interface BatchSheetWords {
  readonly title: string;
  readonly version: (number: number) => string;
  readonly part: string;
  readonly partOf: (part: { readonly number: number; readonly count: number }) => string;
  readonly opened: string;
  readonly operator: string;
  readonly place: string;
  readonly planned: string;
  readonly toWeigh: string;
  readonly component: string;
  readonly lot: string;
  readonly scan: string;
  readonly target: string;
  readonly actual: string;
  readonly steps: string;
  readonly step: string;
  readonly limits: string;
  readonly measured: string;
  readonly result: string;
  readonly made: string;
  readonly losses: string;
  readonly started: string;
  readonly finished: string;
  readonly signature: string;
  readonly contains: (names: string) => string;
  readonly allergensUnknown: string;
  readonly roles: Readonly<Record<string, string>>;
}

export const BATCH_SHEET_WORDS: Translated<BatchSheetWords> = {
  en: {
    title: 'Batch sheet',
    version: (number) => `recipe version ${number}`,
    part: 'Part of a making',
    partOf: ({ number, count }) => `part ${number} of ${count}`,
    opened: 'Opened',
    operator: 'By',
    place: 'Place',
    planned: 'To make',
    toWeigh: 'To weigh',
    component: 'What',
    lot: 'Lot, date',
    scan: 'Scan',
    target: 'Target',
    actual: 'Weighed',
    steps: 'Steps',
    step: 'Step',
    limits: 'Limits',
    measured: 'Measured',
    result: 'What came out',
    made: 'Made (g or pieces)',
    losses: 'Lost, and how',
    started: 'Begun at',
    finished: 'Finished at',
    signature: 'Name',
    contains: (names) => `Allergens of the lots listed: ${names}.`,
    allergensUnknown: 'The allergens of at least one lot listed are unknown.',
    roles: {
      base: 'base',
      infusion: 'infusion',
      shell: 'shell',
      filling: 'filling',
      cap: 'cap',
      decoration: 'decoration',
      slot: 'box',
      packaging: 'packaging',
      heel: 'heel',
      charge: 'charge',
      rework: 'rework',
    },
  },
  fr: {
    title: 'Fiche de fabrication',
    version: (number) => `version ${number} de la recette`,
    part: 'Partie d’un ensemble',
    partOf: ({ number, count }) => `partie ${number} sur ${count}`,
    opened: 'Ouvert',
    operator: 'Par',
    place: 'Lieu',
    planned: 'À faire',
    toWeigh: 'À peser',
    component: 'Quoi',
    lot: 'Lot, date',
    scan: 'Scanner',
    target: 'Cible',
    actual: 'Pesé',
    steps: 'Étapes',
    step: 'Étape',
    limits: 'Limites',
    measured: 'Mesuré',
    result: 'Ce qui en sort',
    made: 'Obtenu (g ou pièces)',
    losses: 'Pertes, et comment',
    started: 'Commencé à',
    finished: 'Terminé à',
    signature: 'Nom',
    contains: (names) => `Allergènes des lots listés : ${names}.`,
    allergensUnknown: 'Les allergènes d’au moins un lot listé sont inconnus.',
    roles: {
      base: 'base',
      infusion: 'infusion',
      shell: 'coque',
      filling: 'fourrage',
      cap: 'fermeture',
      decoration: 'décor',
      slot: 'boîte',
      packaging: 'emballage',
      heel: 'fond de cuve',
      charge: 'charge',
      rework: 'recyclage',
    },
  },
};
