import { LANGUAGES, type Allergen, type Language } from '../specification';
import { wordsIn } from '../words';

/** Names that the United States use for the same sources, as they stand after "Contains". */
export const US_ALLERGEN_NAMES: Readonly<Partial<Record<Allergen, string>>> = {
  soy: 'soy',
  almond: 'almonds',
  hazelnut: 'hazelnuts',
  walnut: 'walnuts',
  cashew: 'cashews',
  pecan: 'pecans',
  brazil_nut: 'Brazil nuts',
  pistachio: 'pistachios',
  macadamia: 'macadamia nuts',
  pine_nut: 'pine nuts',
  peanut: 'peanuts',
  egg: 'eggs',
};

/**
 * The part of an ingredient's name that names its allergen, so that this part can be emphasised:
 * "milk" in "skimmed milk powder", "Milch" in "Milchpulver". Used only for an ingredient that comes
 * from the allergen, so "coconut milk" is never marked as milk. French `noix` alone is the walnut.
 * One pattern per language, in the order of `LANGUAGES`.
 */
const MENTIONS: Readonly<Partial<Record<Allergen, readonly string[]>>> = {
  wheat: ['wheat', 'blé', 'weizen', 'tarwe', 'frumento|grano', 'trigo'],
  oats: ['oats?\\b', 'avoine', 'hafer', 'haver', 'avena', 'avena'],
  egg: [
    'eggs?\\b',
    'œufs?|oeufs?',
    '\\beier|\\bei\\b|\\bei(?=gelb|weiß|weiss)',
    '\\beieren|\\bei(?!\\p{L})|\\bei(?=geel|wit|dooier)',
    'uov[ao]',
    'huevos?',
  ],
  fish: ['fish', 'poissons?', 'fisch', 'vis', 'pesce', 'pescado'],
  peanut: [
    'peanuts?',
    'arachides?|cacahuètes?',
    'erdn[uü]sse?',
    "pinda'?s?",
    'arachid[ei]',
    'cacahuetes?',
  ],
  soy: ['soya|soy', 'soja', 'soja', 'soja', 'soia', 'soja'],
  milk: ['milk', 'lait\\b', 'milch', 'melk', 'latte', 'leche'],
  almond: ['almonds?', 'amandes?', 'mandeln?', 'amandel(?:en)?', 'mandorl[ae]', 'almendras?'],
  hazelnut: [
    'hazelnuts?',
    'noisettes?',
    'haseln[uü]sse?',
    'hazelno(?:ot|ten)',
    'nocciol[ae]',
    'avellanas?',
  ],
  walnut: [
    'walnuts?',
    'noix(?! d[eu])',
    'waln[uü]sse?',
    'walno(?:ot|ten)',
    'noc[ei](?! d)',
    'nuez|nueces',
  ],
  cashew: [
    'cashews?',
    'noix de cajou',
    'kaschun[uü]sse?|cashew',
    'cashew(?:no(?:ot|ten))?',
    'noci di acagiù|anacardi',
    'anacardos?',
  ],
  pecan: [
    'pecans?',
    'noix de pécan',
    'pe[ck]ann[uü]sse?',
    'pecanno(?:ot|ten)',
    'noci di pecan',
    'pacanas?',
  ],
  pistachio: [
    'pistachios?',
    'pistaches?',
    'pistazien?',
    'pistache(?:s|noten)?',
    'pistacch[io]i?',
    'pistachos?',
  ],
  sesame: ['sesame', 'sésame', 'sesam', 'sesam', 'sesamo', 'sésamo'],
  mustard: ['mustard', 'moutarde', 'senf', 'mosterd', 'senape', 'mostaza'],
  sulphites: [
    'sulphites?|sulfites?',
    'sulfites?',
    'sulfite?',
    'sulfiet(?:en)?',
    'solfit[io]',
    'sulfitos?',
  ],
};

const escaped = (name: string): string => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const compiled = new Map<string, RegExp>();

/** Matches the first mention of an allergen in a text of a language. */
export const mentionOf = (allergen: Allergen, language: Language): RegExp => {
  const key = `${language} ${allergen}`;
  const known = compiled.get(key);
  if (known) return known;
  const stated = MENTIONS[allergen]?.[LANGUAGES.indexOf(language)];
  const pattern = new RegExp(stated ?? escaped(wordsIn(language).allergens[allergen]), 'iu');
  compiled.set(key, pattern);
  return pattern;
};
