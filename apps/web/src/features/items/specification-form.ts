import type { components } from '../../api/schema';
import { addExact, isExact } from '../../shared/formats/exact';

type View = components['schemas']['SpecificationView'];
type Dto = components['schemas']['SpecificationDto'];

export const ALLERGENS = [
  'wheat', 'rye', 'barley', 'oats', 'milk', 'egg', 'soy', 'peanut', 'almond', 'hazelnut', 'walnut',
  'cashew', 'pecan', 'brazil_nut', 'pistachio', 'macadamia', 'pine_nut', 'coconut', 'sesame',
  'sulphites', 'lupin', 'mustard', 'celery', 'crustaceans', 'fish', 'molluscs',
] as const; // prettier-ignore

/** Figures of a composition, by the path under which the service keeps them. */
export const FIGURES = [
  'water', 'fat.cocoaButter', 'fat.milkFat', 'fat.nutFat', 'fat.otherFat', 'sugars.sucrose',
  'sugars.glucose', 'sugars.fructose', 'sugars.lactose', 'sugars.maltose', 'sugars.otherSugar',
  'polyols.sorbitol', 'polyols.glycerol', 'higherSaccharides', 'starch', 'protein', 'fibre', 'ash',
  'salt', 'alcohol', 'organicAcids', 'other',
] as const; // prettier-ignore

/** Cuts across the figures above; not part of their sum. */
export const COCOA_FIGURES = [
  'cocoaSolids.cocoaButter', 'cocoaSolids.fatFreeCocoa', 'cocoaSolids.milkSolids',
  'cocoaSolids.milkFat',
] as const; // prettier-ignore

export const NUTRIENTS = [
  'fat',
  'saturates',
  'carbohydrate',
  'sugars',
  'fibre',
  'protein',
  'salt',
] as const;

export interface Part {
  readonly names: Readonly<Record<string, string>>;
  readonly percent: string | null;
  readonly additive?: { readonly functionalClass: string; readonly eNumber: string | null };
  readonly origins: readonly { readonly allergen: string }[];
  readonly parts: readonly Part[];
  readonly [further: string]: unknown;
}

export interface SpecificationForm {
  readonly ingredient: Part;
  readonly allergens: Readonly<Record<string, string>>;
  readonly figures: Readonly<Record<string, string>>;
  readonly nutrition: Readonly<Record<string, string>>;
  readonly statements: Readonly<Record<string, unknown>>;
  readonly document: string;
}

export const emptyPart: Part = { names: {}, percent: null, origins: [], parts: [] };

const asPart = (json: Readonly<Record<string, unknown>>): Part => {
  const list = Array.isArray(json['parts']) ? (json['parts'] as Record<string, unknown>[]) : [];
  return {
    ...json,
    names: (json['names'] ?? {}) as Part['names'],
    percent: (json['percent'] ?? null) as string | null,
    origins: (json['origins'] ?? []) as Part['origins'],
    parts: list.map(asPart),
  };
};

const flat = (json: Readonly<Record<string, unknown>>, above = ''): [string, string][] =>
  Object.entries(json).flatMap(([key, value]): [string, string][] => {
    if (typeof value === 'string') return [[above + key, value]];
    if (typeof value !== 'object' || value === null) return [];
    return flat(value as Record<string, unknown>, `${above}${key}.`);
  });

const nested = (figures: Readonly<Record<string, string>>): Record<string, unknown> => {
  const json: Record<string, unknown> = {};
  for (const [path, value] of Object.entries(figures)) {
    if (value === '') continue;
    const [group = '', name] = path.split('.');
    if (name === undefined) json[group] = value;
    else json[group] = { ...(json[group] as Record<string, string> | undefined), [name]: value };
  }
  return json;
};

const textsOf = (json: Readonly<Record<string, unknown>> | null): Record<string, string> =>
  Object.fromEntries(flat(json ?? {}));

export const figuresOf = textsOf;

export const formOf = (view: View | undefined): SpecificationForm => ({
  ingredient: view === undefined ? emptyPart : asPart(view.ingredient),
  allergens: textsOf(view?.allergens ?? null),
  figures: textsOf(view?.composition ?? null),
  nutrition: textsOf(view?.nutrition ?? null),
  statements: view?.statements ?? {},
  document: view?.document ?? '',
});

export const sumOf = (figures: Readonly<Record<string, string>>): string =>
  addExact('0', ...FIGURES.map((path) => figures[path] ?? '').filter(isExact));

const withValues = (texts: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(Object.entries(texts).filter(([, value]) => value !== ''));

export const bodyOf = (form: SpecificationForm): Dto => {
  const composition = nested(form.figures);
  const nutrition = withValues(form.nutrition);
  return {
    ingredient: form.ingredient,
    allergens: withValues(form.allergens),
    composition: Object.keys(composition).length === 0 ? null : composition,
    nutrition: Object.keys(nutrition).length === 0 ? null : nutrition,
    statements: form.statements,
    document: form.document === '' ? null : form.document,
  };
};
