import { useTranslation } from 'react-i18next';
import { spaced } from './french-spacing';
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
  const inLanguage = (worded: (message: Message) => string): Record<string, string> =>
    Object.fromEntries(
      Object.entries<Message>(messages).map(([key, message]) => [key, worded(message)]),
    );
  i18n.addResourceBundle(
    'en',
    name,
    inLanguage(([en]) => en),
  );
  i18n.addResourceBundle(
    'fr',
    name,
    inLanguage(([, fr]) => spaced(fr)),
  );
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

/** How a line in the browser’s log begins that names a key without a message. */
const NO_WORDING = 'No wording in';

/** What a key of the service looks like; a name that a person gave hardly does. */
const IS_KEY = /^[a-z]+([_-][a-z]+)+$|[a-z][A-Z]/;

/**
 * The message of a word that came from the service, or the word itself when it is new to the app:
 * then the browser's log says so, and a test that walks all screens listens.
 */
export const useWords = <K extends string>(from: Catalogue<K>): ((word: string) => string) => {
  const t = useMessages(from);
  return (word) => {
    if (word in from.messages) return t(word as Base<K>);
    if (IS_KEY.test(word)) console.warn(`${NO_WORDING} ${from.name}: ${word}`);
    return word.replace(/[_-]/g, ' ');
  };
};
