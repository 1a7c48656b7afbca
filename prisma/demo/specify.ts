import {
  compositionOf,
  type Figures,
  REFERENCE_INGREDIENTS,
} from '../../apps/api/src/domain/reference-ingredients';
import {
  ALLERGENS,
  type Allergen,
  type ChocolateKind,
  type Exclusion,
  type IngredientFlags,
  type IngredientNode,
  NUTRIENTS,
  type Presence,
  type Specification,
  specificationToJson,
  type SpecificationJson,
  statedGrams,
} from '../../apps/api/src/domain/specification';
import { Decimal, sum } from '../../apps/api/src/domain/units';

/** How the demo writes an ingredient; `node` and `specify` turn it into a full specification. */
export interface Part {
  readonly en: string;
  readonly fr: string;
  readonly percent?: number;
  readonly from?: Allergen;
  readonly exclusion?: Exclusion;
  readonly additive?: { readonly class: string; readonly e: string };
  readonly flags?: IngredientFlags;
  readonly parts?: readonly Part[];
}

export interface DemoSpecification extends Part {
  /** Key of a published reference composition, or figures of the invented supplier. */
  readonly composition: string | Figures;
  readonly mayContain?: readonly Allergen[];
  /** What this supplier has not answered yet. */
  readonly unknown?: readonly Allergen[];
  readonly chocolate?: ChocolateKind;
  readonly sulphiteMgPerKg?: number;
  /** Grams of saturated fatty acids in 100 g of fat. */
  readonly saturatedPercent?: number;
  readonly proteinPercent?: Partial<Record<Allergen, number>>;
}

const node = (part: Part, isRoot: boolean): IngredientNode =>
  ({
    names: { en: part.en, fr: part.fr },
    percent: isRoot || part.percent === undefined ? null : new Decimal(part.percent),
    ...(part.additive === undefined
      ? {}
      : {
          additive: {
            functionalClass: part.additive.class,
            eNumber: part.additive.e,
            carriedOver: false,
          },
        }),
    origins:
      part.from === undefined
        ? []
        : [
            {
              allergen: part.from,
              ...(part.exclusion === undefined ? {} : { exclusion: part.exclusion }),
            },
          ],
    flags: part.flags ?? {},
    parts: (part.parts ?? []).map((below) => node(below, false)),
  }) as IngredientNode;

const contained = (part: Part): Allergen[] => [
  ...(part.from === undefined || part.exclusion !== undefined ? [] : [part.from]),
  ...(part.parts ?? []).flatMap(contained),
];

const presences = (spec: DemoSpecification): Record<Allergen, Presence> => {
  const contains = new Set(contained(spec));
  const presence = (allergen: Allergen): Presence => {
    if (contains.has(allergen)) return 'contains';
    if (spec.mayContain?.includes(allergen) === true) return 'may_contain';
    return spec.unknown?.includes(allergen) === true ? 'unknown' : 'absent';
  };
  return Object.fromEntries(ALLERGENS.map((allergen) => [allergen, presence(allergen)])) as Record<
    Allergen,
    Presence
  >;
};

const publishedComposition = (key: string) => {
  const found = REFERENCE_INGREDIENTS.find((row) => row.key === key);
  if (found === undefined) throw new Error(`no reference composition "${key}"`);
  return found.composition;
};

/** An invented supplier's full specification; nutrition follows from the composition. */
export const specify = (spec: DemoSpecification): SpecificationJson => {
  const given =
    typeof spec.composition === 'string'
      ? publishedComposition(spec.composition)
      : compositionOf(spec.composition);
  // A sheet accounts for every gram: what a published row leaves open stands under "other".
  const open = Decimal.max(0, new Decimal(100).minus(statedGrams(given)));
  const composition = { ...given, other: given.other.plus(open) };
  const fat = sum(Object.values(composition.fat));
  const sugars = sum(Object.values(composition.sugars));
  const polyols = sum(Object.values(composition.polyols));
  const { starch, higherSaccharides, other, protein, fibre, salt, alcohol, organicAcids } =
    composition;
  const none = new Decimal(0);
  const nutrition = {
    ...Object.fromEntries(NUTRIENTS.map((nutrient) => [nutrient, none])),
    fat,
    saturates: fat.times(spec.saturatedPercent ?? 0).dividedBy(100),
    monounsaturates: null,
    polyunsaturates: null,
    carbohydrate: sum([sugars, polyols, starch, higherSaccharides, other]),
    sugars,
    polyols,
    starch,
    fibre,
    protein,
    salt,
    sodiumMg: salt.times(400),
    alcohol,
    organicAcids,
    addedSugars: null,
    cholesterolMg: null,
    vitaminDMcg: null,
    calciumMg: null,
    ironMg: null,
    potassiumMg: null,
  } as unknown as Specification['nutrition'];
  return specificationToJson({
    ingredient: node(spec, true),
    allergens: presences(spec),
    composition,
    nutrition,
    statements: {
      sulphiteMgPerKg: new Decimal(spec.sulphiteMgPerKg ?? 0),
      glycyrrhizinicMgPerKg: none,
      chocolateKind: spec.chocolate ?? null,
      crossContactProteinMgPerKg: {},
      allergenProteinPercent: Object.fromEntries(
        Object.entries(spec.proteinPercent ?? {}).map(([name, value]) => [
          name,
          new Decimal(value),
        ]),
      ),
    },
  });
};
