import i18next from 'i18next';
import { initReactI18next } from 'react-i18next';

export const languages = ['en', 'fr'] as const;
export type Language = (typeof languages)[number];

const STORED = 'ballotin.language';

const wanted = (): Language => {
  const stored = typeof localStorage === 'undefined' ? null : localStorage.getItem(STORED);
  const first = stored ?? (typeof navigator === 'undefined' ? 'en' : navigator.language);
  return first.startsWith('fr') ? 'fr' : 'en';
};

export const i18n = i18next.createInstance();

// Started with empty resources and without loading anything, so that it is ready at once: each
// feature adds its own catalogue when its code arrives.
void i18n.use(initReactI18next).init({
  lng: wanted(),
  fallbackLng: 'en',
  resources: {},
  initAsync: false,
  interpolation: { escapeValue: false },
  react: { useSuspense: false },
});

const markDocument = (): void => {
  if (typeof document !== 'undefined') document.documentElement.lang = i18n.language;
};
markDocument();

export const speak = async (language: Language): Promise<void> => {
  localStorage.setItem(STORED, language);
  await i18n.changeLanguage(language);
  markDocument();
};

/** Asks the service for its sentences in the language of the screen. */
export const languageHeader = (): { readonly 'Accept-Language': string } => ({
  'Accept-Language': i18n.language,
});

/** The reader's way of writing numbers and days: the browser's regional form of the language. */
export const localeOf = (language: string, preferred: readonly string[]): string =>
  preferred.find((tag) => tag.split('-')[0] === language) ??
  (language === 'en' ? 'en-GB' : language);
