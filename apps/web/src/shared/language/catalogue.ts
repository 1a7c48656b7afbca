import { useTranslation } from 'react-i18next';
import { i18n } from './i18n';

/** A message in every language of the app: a message without its French does not compile. */
export type Message = readonly [en: string, fr: string];

export interface Catalogue<K extends string> {
  readonly name: string;
  readonly messages: Readonly<Record<K, Message>>;
}

type Plural = 'one' | 'other';
type Base<K extends string> = K extends `${infer B}_${Plural}` ? B : K;
export type Values = Readonly<Record<string, string | number>>;
export type Translate<K extends string> = (key: Base<K>, values?: Values) => string;

/** Registers a feature's messages under its name, in both languages. */
export const catalogue = <const K extends string>(
  name: string,
  messages: Readonly<Record<K, Message>>,
): Catalogue<K> => {
  const inLanguage = (position: 0 | 1): Record<string, string> =>
    Object.fromEntries(
      Object.entries<Message>(messages).map(([key, message]) => [key, message[position]]),
    );
  i18n.addResourceBundle('en', name, inLanguage(0));
  i18n.addResourceBundle('fr', name, inLanguage(1));
  return { name, messages };
};

export const translateWith =
  <K extends string>(from: Catalogue<K>): Translate<K> =>
  (key, values = {}) =>
    i18n.t(key, { ...values, ns: from.name, keySeparator: false, nsSeparator: false });

export const useMessages = <K extends string>(from: Catalogue<K>): Translate<K> => {
  const { t } = useTranslation(from.name, { i18n });
  return (key, values = {}) =>
    t(key, { ...values, ns: from.name, keySeparator: false, nsSeparator: false });
};

/** The language of the screen, for links that a browser opens without the app's headers. */
export const useLanguage = (): string => useTranslation(undefined, { i18n }).i18n.language;

/** The message of a word that came from the service, or the word itself when it is new to the app. */
export const useWords = <K extends string>(from: Catalogue<K>): ((word: string) => string) => {
  const t = useMessages(from);
  return (word) => (word in from.messages ? t(word as Base<K>) : word.replace(/[_-]/g, ' '));
};
