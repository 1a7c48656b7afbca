import type { Translated } from '../kit/language';

export type Presence = 'contains' | 'may_contain' | 'absent' | 'unknown';

interface MatrixWords {
  readonly title: string;
  readonly asOf: (day: string) => string;
  readonly piece: string;
  readonly signs: Readonly<Record<Presence, string>>;
}

export const MATRIX_WORDS: Translated<MatrixWords> = {
  en: {
    title: 'Allergens of what is sold loose',
    asOf: (day) => `as of ${day}`,
    piece: 'Piece',
    signs: {
      contains: 'contains',
      may_contain: 'may contain traces',
      absent: 'not an ingredient',
      unknown: 'unknown: don’t serve to anyone who must avoid it',
    },
  },
  fr: {
    title: 'Allergènes des produits vendus en vrac',
    asOf: (day) => `au ${day}`,
    piece: 'Pièce',
    signs: {
      contains: 'contient',
      may_contain: 'traces possibles',
      absent: 'n’est pas un ingrédient',
      unknown: 'inconnu : ne pas servir à qui doit l’éviter',
    },
  },
};
