import { sum } from '../units';
import { ALLERGENS, EXCLUSIONS, type AllergenOrigin } from './allergen-codes';
import {
  FUNCTIONAL_CLASSES,
  VEGETABLE_FATS,
  type Additive,
  type Flavouring,
  type IngredientFlags,
  type IngredientNode,
} from './ingredient';
import { GROUP_KINDS, type Grouping } from './grouping';
import { LANGUAGES, type LocalText } from './language';
import type { JsonReader } from './reader';
import { say } from '../words/say';

/** Deepest nesting of sub-ingredients, and most of them under one parent. */
export const MOST_LEVELS = 6;
export const MOST_PARTS = 60;

export const INGREDIENT_FLAGS = [
  'addedWater', 'volatile', 'polyol', 'sugar', 'aspartame', 'definedInUnionLaw', 'spiceMix',
  'needsNoList', 'characterises', 'flavouringUse', 'liquorice', 'processingAid',
  'fullyHydrogenated', 'partlyHydrogenated', 'varyingProportions', 'otherAnimalFat',
  'flourOrStarch',
] as const satisfies readonly (keyof IngredientFlags)[]; // prettier-ignore

const FIELDS = [
  'names', 'usName', 'percent', 'additive', 'flavouring', 'vegetableFat', 'group', 'origins',
  'flags', 'parts',
] as const; // prettier-ignore

export const readLocalText = (reader: JsonReader): LocalText => {
  const field = reader.fields(LANGUAGES);
  const pairs = LANGUAGES.filter((language) => !field(language).isMissing).map(
    (language) => [language, field(language).text()] as const,
  );
  if (pairs.length === 0) reader.problem(say`must have a name in at least one language`);
  return Object.fromEntries(pairs);
};

const readAdditive = (reader: JsonReader): Additive => {
  const field = reader.fields(['functionalClass', 'eNumber', 'carriedOver']);
  const eNumber = field('eNumber').isMissing ? null : field('eNumber').text();
  if (eNumber !== null && !/^E\d{3,4}[a-z]?(i{1,3}|iv|v)?$/.test(eNumber)) {
    field('eNumber').problem(say`must be an E number such as "E322"`);
  }
  return {
    functionalClass: field('functionalClass').oneOf(FUNCTIONAL_CLASSES) ?? 'stabiliser',
    eNumber,
    carriedOver: field('carriedOver').flag(),
  };
};

const readFlavouring = (reader: JsonReader): Flavouring => {
  const field = reader.fields([
    'natural', 'source', 'fromSourcePercent', 'recognisable', 'imitatesChocolate',
  ]); // prettier-ignore
  return {
    natural: field('natural').flag(),
    source: field('source').isMissing ? null : readLocalText(field('source')),
    fromSourcePercent: field('fromSourcePercent').figureOrNull(100),
    recognisable: field('recognisable').flag(),
    imitatesChocolate: field('imitatesChocolate').flag(),
  };
};

const readOrigin = (reader: JsonReader): AllergenOrigin => {
  const field = reader.fields(['allergen', 'exclusion', 'freeOfProtein', 'species']);
  const exclusion = field('exclusion').isMissing ? null : field('exclusion').oneOf(EXCLUSIONS);
  return {
    allergen: field('allergen').oneOf(ALLERGENS) ?? 'milk',
    ...(exclusion === null ? {} : { exclusion }),
    ...(field('freeOfProtein').flag() ? { freeOfProtein: true } : {}),
    ...(field('species').isMissing ? {} : { species: field('species').text() }),
  };
};

const readGroup = (reader: JsonReader): Grouping => {
  const field = reader.fields(['kind', 'memberNames']);
  return {
    kind: field('kind').oneOf(GROUP_KINDS) ?? 'fruit',
    memberNames: field('memberNames').isMissing ? null : readLocalText(field('memberNames')),
  };
};

const readFlags = (reader: JsonReader): IngredientFlags => {
  if (reader.isMissing) return {};
  const field = reader.fields(INGREDIENT_FLAGS);
  return Object.fromEntries(
    INGREDIENT_FLAGS.filter((flag) => field(flag).flag()).map((flag) => [flag, true]),
  );
};

const checkParts = (reader: JsonReader, parts: readonly IngredientNode[]): void => {
  const stated = parts.flatMap((part) => (part.percent ? [part.percent] : []));
  const total = sum(stated);
  if (total.greaterThan(100)) {
    reader.problem(say`percentages must not exceed 100; they sum to ${total.toString()}`);
  }
};

const key = (names: LocalText): string[] =>
  Object.entries(names).map(([language, name]) => `${language}:${name.toLowerCase()}`);

/** What only some ingredients have. */
const readParticulars = (
  field: (name: (typeof FIELDS)[number]) => JsonReader,
): Pick<IngredientNode, 'usName' | 'additive' | 'flavouring' | 'vegetableFat' | 'group'> => {
  const fat = field('vegetableFat').isMissing ? null : field('vegetableFat').oneOf(VEGETABLE_FATS);
  return {
    ...(field('usName').isMissing ? {} : { usName: field('usName').text() }),
    ...(field('additive').isMissing ? {} : { additive: readAdditive(field('additive')) }),
    ...(field('flavouring').isMissing ? {} : { flavouring: readFlavouring(field('flavouring')) }),
    ...(fat === null ? {} : { vegetableFat: fat }),
    ...(field('group').isMissing ? {} : { group: readGroup(field('group')) }),
  };
};

/** Reads one ingredient and what it is made of. `above` holds the names on the way down to it. */
export const readIngredient = (
  reader: JsonReader,
  above: readonly string[] = [],
  level = 0,
): IngredientNode => {
  const field = reader.fields(FIELDS);
  const names = readLocalText(field('names'));
  if (key(names).some((name) => above.includes(name))) {
    field('names').problem(say`must not be an ingredient of itself`);
  }
  const deepEnough = level >= MOST_LEVELS;
  const below = field('parts').list(MOST_PARTS);
  if (deepEnough && below.length > 0) {
    field('parts').problem(say`must not nest deeper than ${MOST_LEVELS} levels`);
  }
  const chain = [...above, ...key(names)];
  const parts = deepEnough ? [] : below.map((part) => readIngredient(part, chain, level + 1));
  checkParts(field('parts'), parts);
  if (level === 0 && !field('percent').isMissing) {
    field('percent').problem(say`must not be given for the ingredient itself`);
  }
  return {
    names,
    ...readParticulars(field),
    percent: field('percent').figureOrNull(100),
    origins: field('origins').list(12).map(readOrigin),
    flags: readFlags(field('flags')),
    parts,
  };
};
