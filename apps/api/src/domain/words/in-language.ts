import { FRENCH } from './french';
import { inEnglish, isSaid, told } from './say';

/** Languages in which the service speaks to the people who use it. */
export const READER_LANGUAGES = ['en', 'fr'] as const;
export type ReaderLanguage = (typeof READER_LANGUAGES)[number];

/** A text for a reader: its sentences in the reader's language, all else as it is. */
export const inLanguage = (text: string, language: ReaderLanguage): string => {
  if (!isSaid(text)) return text;
  return language === 'fr' ? told(text, FRENCH) : inEnglish(text);
};
