/** Languages that a label can speak (ISO 639-1). */
export const LANGUAGES = ['en', 'fr', 'de', 'nl', 'it', 'es'] as const;
export type Language = (typeof LANGUAGES)[number];

/** A text that is stated per language; a label refuses to print in a language that is missing. */
export type LocalText = Readonly<Partial<Record<Language, string>>>;
export type FullText = Readonly<Record<Language, string>>;
