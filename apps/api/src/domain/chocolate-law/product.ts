import { finding, type IngoingLot, type IngoingMix } from '../declaration';
import type { LabelFinding } from '../label/content';
import type { ChocolateKind, IngredientNode } from '../specification';
import { sum, ZERO, type Decimal } from '../units';
import { shortfalls, type ChocolateFigures } from './minimum-contents';

/** What a product is sold as, in the sense of Directive 2000/36/EC. */
export type LegalName =
  | { readonly kind: 'filled_chocolate' }
  | { readonly kind: 'praline' }
  | { readonly kind: 'chocolate'; readonly chocolate: ChocolateKind }
  | { readonly kind: 'assortment'; readonly onlyChocolates: boolean }
  | { readonly kind: 'confectionery' };

const FILLED_LEAST_PERCENT = 25;
const OTHER_MATTER_MOST_PERCENT = 40;
const VEGETABLE_FAT_MOST_PERCENT = 5;

const isChocolate = (lot: IngoingLot): boolean =>
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
    hazelnuts: of((lot) => percentFrom(lot.specification?.ingredient, ['hazelnut'])),
    nuts: of((lot) => percentFrom(lot.specification?.ingredient, NUTS)),
  };
};

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

/** Checks a name against what is inside. `shellG` is the outer part, when the making recorded it. */
export const nameFindings = (
  name: LegalName,
  mix: IngoingMix,
  shellG: Decimal | null,
): LabelFinding[] => {
  switch (name.kind) {
    case 'filled_chocolate':
      return shareFindings('filled chocolate', shellG ?? chocolateG(mix), mix);
    case 'praline':
      return shareFindings('praline or “a chocolate”', chocolateG(mix), mix);
    case 'chocolate':
      return barFindings(name.chocolate, mix);
    case 'assortment':
      return name.onlyChocolates
        ? []
        : [notAllowed('A box that mixes chocolates with other sweets is no chocolate assortment.')];
    case 'confectionery':
      return [];
  }
};

const notAllowed = (detail: string, facts: LabelFinding['facts'] = {}): LabelFinding =>
  finding('refusal', 'name-not-allowed', detail, facts);

const shareFindings = (name: string, chocolate: Decimal, mix: IngoingMix): LabelFinding[] => {
  const percent = chocolatePercent(chocolate, mix.finishedG);
  if (percent.greaterThanOrEqualTo(FILLED_LEAST_PERCENT)) return [];
  const shown = percent.toDecimalPlaces(2).toString();
  const detail =
    `Chocolate is ${shown} % of the weight; the name ${name} needs ${FILLED_LEAST_PERCENT} %. ` +
    'Cast a thicker shell or choose another name.';
  return [notAllowed(detail, { chocolatePercent: shown })];
};

const barFindings = (kind: ChocolateKind, mix: IngoingMix): LabelFinding[] => {
  const findings: LabelFinding[] = [];
  const figures = chocolateFigures(mix);
  if (!figures) {
    const detail =
      'The composition of the chocolate isn’t stated in full, so its legal name can’t be checked.';
    findings.push(finding('warning', 'name-unchecked', detail));
  }
  const short = figures ? shortfalls(kind, figures) : [];
  if (short.length > 0) findings.push(notAllowed(`Not ${kind}: ${short.join('; ')}.`));
  const others = mix.lots.filter((lot) => !isChocolate(lot));
  const otherPercent = chocolatePercent(sum(others.map((lot) => lot.massG)), mix.finishedG);
  if (!kind.includes('gianduja') && otherPercent.greaterThan(OTHER_MATTER_MOST_PERCENT)) {
    const shown = otherPercent.toDecimalPlaces(2).toString();
    findings.push(notAllowed(`Other edible matter is ${shown} %; at most 40 % is allowed.`));
  }
  return [...findings, ...others.flatMap(barredMatter)];
};

const barredMatter = (lot: IngoingLot): LabelFinding[] => {
  const flags = lot.specification?.ingredient.flags;
  const flavour = lot.specification?.ingredient.flavouring;
  const barred = [
    ...(flags?.otherAnimalFat ? ['animal fat that isn’t milk fat'] : []),
    ...(flags?.flourOrStarch ? ['flour or starch'] : []),
    ...(flavour?.imitatesChocolate ? ['a flavouring that imitates chocolate or milk fat'] : []),
  ].join(', ');
  if (barred === '') return [];
  return [notAllowed(`Lot ${lot.lotCode} (${lot.itemName}) is ${barred}, barred from chocolate.`)];
};

/** Vegetable fats above their limit, or of a plant that isn't allowed. */
export const vegetableFatFindings = (mix: IngoingMix): LabelFinding[] => {
  const { percent, notAllowed: plants } = vegetableFats(mix);
  const over = percent.greaterThan(VEGETABLE_FAT_MOST_PERCENT);
  return [
    ...(over
      ? [notAllowed(`Vegetable fats are ${percent.toDecimalPlaces(2).toString()} % of the chocolate; at most 5 % is allowed.`)]
      : []),
    ...plants.map((plant) => notAllowed(`${plant} isn’t a fat that chocolate may hold.`)),
  ];
}; // prettier-ignore
