import type { components } from '../../api/schema';

export type LabelSettings = components['schemas']['LabelSettingsDto'];

/** What each part of the settings form is given. */
export interface SettingsFields {
  readonly value: LabelSettings;
  readonly put: (part: Partial<LabelSettings>) => void;
  readonly errors: Readonly<Record<string, string>>;
}

export const LEGAL = [
  'filled_chocolate', 'praline', 'chocolate', 'assortment', 'confectionery',
] as const; // prettier-ignore
export const CHOCOLATES = [
  'chocolate', 'couverture', 'gianduja', 'chocolate_vermicelli', 'milk_chocolate',
  'milk_couverture', 'milk_gianduja', 'milk_chocolate_vermicelli', 'cream_chocolate',
  'skimmed_milk_chocolate', 'family_milk_chocolate', 'white_chocolate', 'powdered_chocolate',
  'drinking_chocolate',
] as const satisfies readonly LabelSettings['chocolateKind'][]; // prettier-ignore
export const AMERICAN = [
  'sweet_chocolate', 'semisweet_chocolate', 'milk_chocolate', 'skim_milk_chocolate',
  'white_chocolate',
] as const satisfies readonly LabelSettings['americanChocolate'][]; // prettier-ignore
export const GROUPS = [
  'fruit', 'vegetable', 'mushroom', 'spice', 'herb', 'vegetable_oil', 'vegetable_fat',
] as const satisfies readonly LabelSettings['listGroups'][number][]; // prettier-ignore
export const PACK_FORMS = ['loose', 'wrapped', 'singles', 'by_number'] as const;
export const SYMBOLS = ['none', 'own_qr', 'gs1datamatrix', 'digital_link', 'ean13'] as const;
export const CANDIES = [
  'candy', 'hard_candy', 'baking_candy', 'after_dinner', 'marshmallow',
] as const; // prettier-ignore

/** Codes of the service in the words of the page. */
export const asChoices = <C extends string>(
  codes: readonly C[],
  words: (code: C) => string,
): { value: string; label: string }[] => codes.map((code) => ({ value: code, label: words(code) }));
