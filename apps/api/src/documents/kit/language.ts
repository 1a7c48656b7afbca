/** Languages that the papers speak; labels have languages of their own. */
export type PaperLanguage = 'en' | 'fr';

const isPaperLanguage = (language: string): language is PaperLanguage =>
  language === 'en' || language === 'fr';

/** The first of the workshop's languages that papers speak, English when none is. */
export const paperLanguage = (languages: readonly string[]): PaperLanguage =>
  languages.find(isPaperLanguage) ?? 'en';

/** The words of one paper in every language. */
export type Translated<T> = Readonly<Record<PaperLanguage, T>>;
