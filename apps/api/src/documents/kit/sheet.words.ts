import type { Translated } from './language';

interface SheetWords {
  readonly printed: (when: string, who: string) => string;
  readonly page: (page: number, count: number) => string;
  readonly substitutes: string;
  readonly caution: string;
}

export const SHEET_WORDS: Translated<SheetWords> = {
  en: {
    printed: (when, who) => `Printed ${when} by ${who}`,
    page: (page, count) => `Page ${page} of ${count}`,
    substitutes: '□ stands for a sign that can’t be printed here.',
    caution: 'Caution',
  },
  fr: {
    printed: (when, who) => `Imprimé le ${when} par ${who}`,
    page: (page, count) => `Page ${page} sur ${count}`,
    substitutes: '□ remplace un signe qui ne peut pas être imprimé ici.',
    caution: 'Attention',
  },
};
