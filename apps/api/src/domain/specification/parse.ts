import type { Decimal } from '../units';
import { ALLERGENS, PRESENCES, type Allergen, type AllergenStatement } from './allergen-codes';
import type { IngredientNode } from './ingredient';
import { readIngredient } from './parse-ingredient';
import { readComposition, readNutrition } from './parse-figures';
import { JsonReader, type Problem } from './reader';
import { CHOCOLATE_KINDS, type Specification, type SpecificationStatements } from './specification';
import { say } from '../words/say';

export type Parsed =
  | { readonly ok: true; readonly value: Specification }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Largest figure in milligrams per kilogram. */
const MILLION = 1_000_000;

const readAllergens = (reader: JsonReader): AllergenStatement => {
  if (reader.isMissing) return {};
  const field = reader.fields(ALLERGENS);
  const stated = ALLERGENS.filter((allergen) => !field(allergen).isMissing);
  return Object.fromEntries(
    stated.map((allergen) => [allergen, field(allergen).oneOf(PRESENCES) ?? 'unknown']),
  );
};

const readPerAllergen = (reader: JsonReader, most: number): Partial<Record<Allergen, Decimal>> => {
  if (reader.isMissing) return {};
  const field = reader.fields(ALLERGENS);
  const stated = ALLERGENS.filter((allergen) => !field(allergen).isMissing);
  return Object.fromEntries(stated.map((allergen) => [allergen, field(allergen).figure(most)]));
};

const NOTHING_STATED: SpecificationStatements = {
  sulphiteMgPerKg: null,
  glycyrrhizinicMgPerKg: null,
  chocolateKind: null,
  crossContactProteinMgPerKg: {},
  allergenProteinPercent: {},
};

const readStatements = (reader: JsonReader): SpecificationStatements => {
  const known = [
    'sulphiteMgPerKg', 'glycyrrhizinicMgPerKg', 'chocolateKind', 'crossContactProteinMgPerKg',
    'allergenProteinPercent',
  ] as const; // prettier-ignore
  if (reader.isMissing) return NOTHING_STATED;
  const field = reader.fields(known);
  const kind = field('chocolateKind');
  return {
    sulphiteMgPerKg: field('sulphiteMgPerKg').figureOrNull(MILLION),
    glycyrrhizinicMgPerKg: field('glycyrrhizinicMgPerKg').figureOrNull(MILLION),
    chocolateKind: kind.isMissing ? null : kind.oneOf(CHOCOLATE_KINDS),
    crossContactProteinMgPerKg: readPerAllergen(field('crossContactProteinMgPerKg'), MILLION),
    allergenProteinPercent: readPerAllergen(field('allergenProteinPercent'), 100),
  };
};

/** Every allergen that an ingredient or anything inside it comes from, exclusions left aside. */
const plainOrigins = (node: IngredientNode): Allergen[] => [
  ...node.origins.filter((origin) => !origin.exclusion).map((origin) => origin.allergen),
  ...node.parts.flatMap(plainOrigins),
];

const allOrigins = (node: IngredientNode): Allergen[] => [
  ...node.origins.map((origin) => origin.allergen),
  ...node.parts.flatMap(allOrigins),
];

/** The allergen table and the ingredients must tell one story, or one of them is wrong. */
const checkAgreement = (reader: JsonReader, specification: Specification): void => {
  const { allergens, ingredient } = specification;
  for (const allergen of new Set(plainOrigins(ingredient))) {
    if (allergens[allergen] !== 'contains') {
      reader.child(allergen, 0).problem(say`must be "contains": an ingredient comes from it`);
    }
  }
  const origins = new Set(allOrigins(ingredient));
  for (const allergen of ALLERGENS) {
    if (allergens[allergen] === 'contains' && !origins.has(allergen) && allergen !== 'sulphites') {
      const message = say`is "contains", so the ingredient that it is in must name it as its origin`;
      reader.child(allergen, 0).problem(message);
    }
  }
};

/** Untrusted JSON → a specification, or everything that is wrong with it. */
export const parseSpecification = (json: unknown): Parsed => {
  const problems: Problem[] = [];
  const reader = new JsonReader(json, '', problems);
  const field = reader.fields([
    'ingredient', 'allergens', 'composition', 'nutrition', 'statements',
  ]); // prettier-ignore
  const composition = field('composition');
  const nutrition = field('nutrition');
  const value: Specification = {
    ingredient: readIngredient(field('ingredient')),
    allergens: readAllergens(field('allergens')),
    composition: composition.isMissing ? null : readComposition(composition),
    nutrition: nutrition.isMissing ? null : readNutrition(nutrition),
    statements: readStatements(field('statements')),
  };
  if (problems.length === 0) checkAgreement(field('allergens'), value);
  return problems.length === 0 ? { ok: true, value } : { ok: false, problems };
};
