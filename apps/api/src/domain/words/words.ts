import type { Allergen, Language } from '../specification';
import type { Catalogue } from './catalogues/catalogue';
import { de } from './catalogues/de';
import { en } from './catalogues/en';
import { es } from './catalogues/es';
import { fr } from './catalogues/fr';
import { it } from './catalogues/it';
import { nl } from './catalogues/nl';

const CATALOGUES: Readonly<Record<Language, Catalogue>> = { en, fr, de, nl, it, es };

export const wordsIn = (language: Language): Catalogue => CATALOGUES[language];

/** Fills `{slot}`s; a slot without a value is a mistake of the code. */
export const fill = (template: string, values: Readonly<Record<string, string>>): string =>
  template.replace(/\{(\w+)\}/g, (_, slot: string) => {
    const value = values[slot];
    if (value === undefined) throw new RangeError(`no value for the slot ${slot} of a wording`);
    return value;
  });

/** Everyday name of an allergen in a language, as it stands in a list. */
export const allergenName = (allergen: Allergen, language: Language): string =>
  wordsIn(language).allergens[allergen];
