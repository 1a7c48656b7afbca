import { finding, type IngoingMix } from '../declaration';
import type { LabelFinding } from '../label/content';
import type { ChocolateKind, IngredientNode } from '../specification';
import type { Decimal } from '../units';
import type { AmericanChocolate } from './american-names';
import { isMilkKind, type ChocolateFigures } from './minimum-contents';
import { notAllowed } from './name-checks';
import { chocolateFigures, isChocolate, vegetableFats, type LegalName } from './product';
import { named, say } from '../words/say';

/** Chocolate liquor for each part of its fat-free cocoa, 163.123(a)(2). */
const LIQUOR_PER_FAT_FREE_COCOA = '2.2';

/** Chocolate liquor as the standards count it, per cent; from dry cocoa, so rather too low. */
export const chocolateLiquor = ({ fatFreeCocoa }: ChocolateFigures): Decimal =>
  fatFreeCocoa.times(LIQUOR_PER_FAT_FREE_COCOA);

type Rule = readonly [
  words: string,
  read: (figures: ChocolateFigures) => Decimal,
  bound: 'least' | 'most' | 'under',
  percent: string,
];

const liquor = (percent: string): Rule => [
  say`chocolate liquor`,
  chocolateLiquor,
  'least',
  percent,
];
const milkSolids = (bound: Rule[2], percent: string): Rule => [
  say`total milk solids`, (figures) => figures.milkSolids, bound, percent,
]; // prettier-ignore
const milkFat = (bound: Rule[2], percent: string): Rule => [
  'milkfat', (figures) => figures.milkFat, bound, percent,
]; // prettier-ignore

/** 21 CFR 163.123, 163.124 and 163.130 as published; 163.140 from memory. */
const STANDARDS: Readonly<Record<AmericanChocolate, readonly Rule[]>> = {
  sweet_chocolate: [liquor('15'), milkSolids('under', '12')],
  semisweet_chocolate: [liquor('35'), milkSolids('under', '12')],
  milk_chocolate: [liquor('10'), milkFat('least', '3.39'), milkSolids('least', '12')],
  skim_milk_chocolate: [liquor('10'), milkFat('under', '3.39'), milkSolids('least', '12')],
  white_chocolate: [
    [say`cacao fat`, (figures) => figures.cocoaButter, 'least', '20'],
    milkFat('least', '3.5'),
    milkSolids('least', '14'),
    [say`nutritive carbohydrate sweetener`, (figures) => figures.sweeteners, 'most', '55'],
  ],
};

/** Why a chocolate may not bear a name in the United States; empty when it may. */
export const americanShortfalls = (name: AmericanChocolate, figures: ChocolateFigures): string[] =>
  STANDARDS[name].flatMap(([words, read, bound, percent]) => {
    const value = read(figures);
    const shown = say`${named(words)} is ${value.toDecimalPlaces(2).toString()} %`;
    if (bound === 'least' && value.lessThan(percent)) return [say`${shown}, at least ${percent} % is needed`]; // prettier-ignore
    if (bound === 'most' && value.greaterThan(percent)) return [say`${shown}, at most ${percent} % is allowed`]; // prettier-ignore
    if (bound === 'under' && value.greaterThanOrEqualTo(percent)) return [say`${shown}, less than ${percent} % is allowed`]; // prettier-ignore
    return [];
  });

/** The name that follows from the European kind when a person has chosen none. */
export const americanNameOf = (kind: ChocolateKind): AmericanChocolate | null => {
  if (kind === 'white_chocolate') return 'white_chocolate';
  if (kind === 'skimmed_milk_chocolate') return 'skim_milk_chocolate';
  if (kind === 'powdered_chocolate' || kind === 'drinking_chocolate') return null;
  return isMilkKind(kind) ? 'milk_chocolate' : 'sweet_chocolate';
};

const coloursWithin = (node: IngredientNode): boolean =>
  node.additive?.functionalClass === 'colour' || node.parts.some(coloursWithin);

/** A name against the standards of identity, and the fats that no American chocolate may hold. */
export const americanFindings = (name: LegalName, mix: IngoingMix): LabelFinding[] => [
  ...otherFats(name, mix),
  ...(name.kind === 'chocolate' ? standardFindings(name.american ?? americanNameOf(name.chocolate), mix) : []),
]; // prettier-ignore

const otherFats = (name: LegalName, mix: IngoingMix): LabelFinding[] => {
  if (vegetableFats(mix).percent.isZero()) return [];
  if (name.kind === 'chocolate') {
    return [notAllowed(say`Chocolate with vegetable fats beside cocoa butter is no chocolate in this market.`)]; // prettier-ignore
  }
  const detail = say`A chocolate inside holds vegetable fats beside cocoa butter. In this market it is a “chocolate and vegetable fat coating” and must be named so in the list.`;
  return [finding('warning', 'name-unchecked', detail)];
};

const standardFindings = (name: AmericanChocolate | null, mix: IngoingMix): LabelFinding[] => {
  const figures = chocolateFigures(mix);
  if (name === null || !figures) {
    const detail =
      name === null
        ? say`No standard of identity is known here for this kind, so its name isn’t checked.`
        : say`The composition of the chocolate isn’t stated in full, so its name can’t be checked.`;
    return [finding('warning', 'name-unchecked', detail)];
  }
  const words = name.replaceAll('_', ' ');
  const short = americanShortfalls(name, figures);
  const coloured =
    name === 'white_chocolate' &&
    mix.lots.some((lot) => isChocolate(lot) && lot.specification && coloursWithin(lot.specification.ingredient)); // prettier-ignore
  return [
    ...(short.length > 0 ? [notAllowed(say`Not ${named(words)}: ${short.join('; ')}.`)] : []),
    ...(coloured
      ? [notAllowed(say`White chocolate must be free of colours (21 CFR 163.124).`)]
      : []),
  ];
};
