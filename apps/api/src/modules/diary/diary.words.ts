import type { PaperLanguage } from '../../documents';

export interface DiaryWords {
  readonly language: PaperLanguage;
  readonly measures: Readonly<Record<string, string>>;
  readonly limits: (low: string | null, high: string | null) => string;
  readonly corrects: string;
  readonly wrong: string;
  readonly mould: Readonly<Record<string, string>>;
  readonly heel: Readonly<Record<string, string>>;
  readonly clean: string;
  readonly notClean: string;
  readonly actions: Readonly<Record<string, string>>;
  readonly everywhere: string;
}

const EN: DiaryWords = {
  language: 'en',
  measures: {
    temp_c: '°C',
    humidity_percent: '% humidity',
    water_activity: 'water activity',
    ph: 'pH',
    brix: '°Brix',
    mass_g: 'g',
  },
  limits: (low, high) => {
    if (low !== null && high !== null) return ` (limits ${low} to ${high})`;
    if (low !== null) return ` (at least ${low})`;
    return high === null ? '' : ` (at most ${high})`;
  },
  corrects: 'puts an earlier reading right',
  wrong: 'marked as wrong',
  mould: { sound: 'sound', chipped: 'CHIPPED', retired: 'retired' },
  heel: { wasted: 'heel wasted', kept: 'heel kept', nothing_left: 'nothing left' },
  clean: 'empty and clean',
  notClean: 'emptied, NOT cleaned',
  actions: {
    'delivery.booked': 'goods taken in',
    'batch.opened': 'batch opened',
    'batch.finished': 'batch finished',
    'batch.abandoned': 'batch abandoned',
    'tank.charged': 'tank charged',
    'dispatch.sent': 'goods sent',
    'dispatch.returned': 'goods taken back',
    'labels.printed': 'labels printed',
    'complaint.registered': 'complaint taken',
    'recall.opened': 'recall case opened',
    'recall.closed': 'recall case closed',
    'stocktake.booked': 'stock counted',
    'meter.calibrated': 'meter checked',
  },
  everywhere: 'workshop',
};

const FR: DiaryWords = {
  language: 'fr',
  measures: {
    temp_c: '°C',
    humidity_percent: '% d’humidité',
    water_activity: 'activité de l’eau',
    ph: 'pH',
    brix: '°Brix',
    mass_g: 'g',
  },
  limits: (low, high) => {
    if (low !== null && high !== null) return ` (limites ${low} à ${high})`;
    if (low !== null) return ` (au moins ${low})`;
    return high === null ? '' : ` (au plus ${high})`;
  },
  corrects: 'corrige un relevé précédent',
  wrong: 'marqué comme faux',
  mould: { sound: 'en bon état', chipped: 'ÉBRÉCHÉ', retired: 'retiré' },
  heel: { wasted: 'fond jeté', kept: 'fond gardé', nothing_left: 'rien ne restait' },
  clean: 'vide et propre',
  notClean: 'vidée, PAS nettoyée',
  actions: {
    'delivery.booked': 'marchandise reçue',
    'batch.opened': 'fabrication ouverte',
    'batch.finished': 'fabrication terminée',
    'batch.abandoned': 'fabrication abandonnée',
    'tank.charged': 'cuve chargée',
    'dispatch.sent': 'marchandise envoyée',
    'dispatch.returned': 'marchandise reprise',
    'labels.printed': 'étiquettes imprimées',
    'complaint.registered': 'réclamation reçue',
    'recall.opened': 'rappel ouvert',
    'recall.closed': 'rappel clos',
    'stocktake.booked': 'stock compté',
    'meter.calibrated': 'appareil vérifié',
  },
  everywhere: 'atelier',
};

export const DIARY_WORDS: Readonly<Record<PaperLanguage, DiaryWords>> = { en: EN, fr: FR };

/** Actions of the journal that a diary shows as work done. */
export const WORK_ACTIONS = Object.keys(EN.actions);
