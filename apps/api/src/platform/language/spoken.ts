import { inLanguage, type ReaderLanguage } from '../../domain/words/in-language';

const isPlain = (value: object): boolean => {
  const made: unknown = Object.getPrototypeOf(value);
  return made === Object.prototype || made === null;
};

/**
 * An answer with every sentence in it as the reader reads it. Only lists and plain objects are
 * looked into: a number, a day or a file keeps what it is.
 */
export const spoken = (value: unknown, language: ReaderLanguage): unknown => {
  if (typeof value === 'string') return inLanguage(value, language);
  if (Array.isArray(value)) return value.map((entry) => spoken(entry, language));
  if (typeof value !== 'object' || value === null || !isPlain(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, entry]) => [name, spoken(entry, language)]),
  );
};
