import type { IngoingLot, IngoingMix } from '../declaration';
import {
  SUGAR_KINDS,
  type ChocolateKind,
  type CompositionPer100g,
  type IngredientNode,
} from '../specification';
import { sum, ZERO, type Decimal } from '../units';
import type { AmericanChocolate } from './american-names';
import type { ChocolateFigures } from './minimum-contents';

/** What a product is sold as, in the sense of Directive 2000/36/EC. */
export type LegalName =
  | { readonly kind: 'filled_chocolate' }
  | { readonly kind: 'praline' }
  | {
      readonly kind: 'chocolate';
      readonly chocolate: ChocolateKind;
      /** Name in the United States where it isn't the one that follows from the European kind. */
      readonly american?: AmericanChocolate;
    }
  | { readonly kind: 'assortment'; readonly onlyChocolates: boolean }
  | { readonly kind: 'confectionery' };

export const isChocolate = (lot: IngoingLot): boolean =>
  (lot.specification?.statements.chocolateKind ?? null) !== null;

export const chocolateG = (mix: IngoingMix): Decimal =>
  sum(mix.lots.filter(isChocolate).map((lot) => lot.massG));

/** Chocolate's share of the whole weight, filling included, 0–100. */
export const chocolatePercent = (chocolate: Decimal, totalG: Decimal): Decimal =>
  totalG.greaterThan(0) ? chocolate.times(100).dividedBy(totalG) : ZERO;

/** The composition of the chocolate in a mix, other edible matter taken out; null when unstated. */
export const chocolateFigures = (mix: IngoingMix): ChocolateFigures | null => {
  const lots = mix.lots.filter(isChocolate);
  const weight = sum(lots.map((lot) => lot.massG));
  if (weight.isZero() || lots.some((lot) => !lot.specification?.composition)) return null;
  const of = (pick: (lot: IngoingLot) => Decimal): Decimal =>
    sum(lots.map((lot) => pick(lot).times(lot.massG))).dividedBy(weight);
  const cocoa = (part: 'cocoaButter' | 'fatFreeCocoa' | 'milkSolids' | 'milkFat'): Decimal =>
    of((lot) => lot.specification?.composition?.cocoaSolids[part] ?? ZERO);
  return {
    cocoaButter: cocoa('cocoaButter'),
    fatFreeCocoa: cocoa('fatFreeCocoa'),
    milkSolids: cocoa('milkSolids'),
    milkFat: cocoa('milkFat'),
    sweeteners: of((lot) => addedSugars(lot.specification?.composition ?? null)),
    hazelnuts: of((lot) => percentFrom(lot.specification?.ingredient, ['hazelnut'])),
    nuts: of((lot) => percentFrom(lot.specification?.ingredient, NUTS)),
  };
};

const addedSugars = (composition: CompositionPer100g | null): Decimal =>
  sum(
    SUGAR_KINDS.filter((kind) => kind !== 'lactose').map(
      (kind) => composition?.sugars[kind] ?? ZERO,
    ),
  );

const NUTS: readonly string[] = [
  'almond', 'hazelnut', 'walnut', 'cashew', 'pecan', 'brazil_nut', 'pistachio', 'macadamia',
]; // prettier-ignore

const percentFrom = (node: IngredientNode | undefined, allergens: readonly string[]): Decimal =>
  sum(
    (node?.parts ?? [])
      .filter((part) => part.origins.some((origin) => allergens.includes(origin.allergen)))
      .map((part) => part.percent ?? ZERO),
  );

/** Vegetable fats beside cocoa butter, per cent of the chocolate, and which of them aren't allowed. */
export const vegetableFats = (mix: IngoingMix): { percent: Decimal; notAllowed: string[] } => {
  const lots = mix.lots.filter(isChocolate);
  const weight = sum(lots.map((lot) => lot.ingoingG));
  const notAllowed: string[] = [];
  let grams = ZERO;
  for (const lot of lots) {
    for (const part of lot.specification?.ingredient.parts ?? []) {
      if (!part.vegetableFat) continue;
      grams = grams.plus(lot.ingoingG.times(part.percent ?? 100).dividedBy(100));
      if (part.vegetableFat === 'other') notAllowed.push(Object.values(part.names)[0] ?? '?');
    }
  }
  return { percent: weight.isZero() ? ZERO : grams.times(100).dividedBy(weight), notAllowed };
};
