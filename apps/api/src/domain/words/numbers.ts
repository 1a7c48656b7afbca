import type { Language } from '../specification';

/** No-break space: a figure and its unit never part at the end of a line. */
export const NBSP = '\u00a0';

/** A colon in the manner of a language: French keeps a space before it, which never breaks. */
export const colonIn = (language: Language): string => (language === 'fr' ? `${NBSP}:` : ':');

const SPACED_PERCENT: readonly Language[] = ['fr', 'de', 'es'];

/** A decimal text in the manner of a language: comma everywhere but in English. */
export const figureIn = (figure: string, language: Language): string =>
  language === 'en' ? figure : figure.replace('.', ',');

export const percentIn = (figure: string, language: Language): string =>
  `${figureIn(figure, language)}${SPACED_PERCENT.includes(language) ? NBSP : ''}%`;
