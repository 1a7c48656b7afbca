import { inLanguage, type ReaderLanguage } from '../../domain/words/in-language';

const isPlain = (value: object): boolean => {
  const made: unknown = Object.getPrototypeOf(value);
  return made === Object.prototype || made === null;
};

/** The same list when none of its entries is said otherwise: most answers have few sentences. */
const listSpoken = (list: readonly unknown[], language: ReaderLanguage): readonly unknown[] => {
  let told: unknown[] | undefined;
  for (let index = 0; index < list.length; index += 1) {
    const entry = spoken(list[index], language);
    if (entry === list[index]) continue;
    told ??= [...list];
    told[index] = entry;
  }
  return told ?? list;
};

const objectSpoken = (value: object, language: ReaderLanguage): object => {
  let told: Record<string, unknown> | undefined;
  for (const name in value) {
    const entry: unknown = Reflect.get(value, name);
    const said = spoken(entry, language);
    if (said === entry) continue;
    told ??= { ...value };
    told[name] = said;
  }
  return told ?? value;
};

/**
 * An answer with every sentence in it as the reader reads it. Only lists and plain objects are
 * looked into: a number, a day or a file keeps what it is. Nothing is changed in place.
 */
export const spoken = (value: unknown, language: ReaderLanguage): unknown => {
  if (typeof value === 'string') return inLanguage(value, language);
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return listSpoken(value, language);
  return isPlain(value) ? objectSpoken(value, language) : value;
};
