import type { ChocolateKind } from '../specification';
import { Decimal } from '../units';
import { BOUNDS, type Measure } from './bounds';
import { inEnglish, named, say, type Sentence } from '../words/say';

/** What a chocolate is made of, per cent of the chocolate with other edible matter taken out. */
export interface ChocolateFigures {
  readonly cocoaButter: Decimal;
  readonly fatFreeCocoa: Decimal;
  readonly milkSolids: Decimal;
  readonly milkFat: Decimal;
  /** Sugars that were added: all of them but the lactose that milk brings. */
  readonly sweeteners: Decimal;
  /** Per cent of the whole: hazelnuts, and all nuts together. */
  readonly hazelnuts: Decimal;
  readonly nuts: Decimal;
}

const measured = (figures: ChocolateFigures, measure: Measure): Decimal => {
  switch (measure) {
    case 'total dry cocoa':
      return totalCocoa(figures);
    case 'cocoa butter':
      return figures.cocoaButter;
    case 'dry fat-free cocoa':
      return figures.fatFreeCocoa;
    case 'dry milk solids':
      return figures.milkSolids;
    case 'milk fat':
      return figures.milkFat;
    case 'cocoa butter and milk fat together':
      return figures.cocoaButter.plus(figures.milkFat);
    case 'hazelnuts':
      return figures.hazelnuts;
    case 'all nuts':
      return figures.nuts;
  }
};

export const totalCocoa = (figures: ChocolateFigures): Decimal =>
  figures.cocoaButter.plus(figures.fatFreeCocoa);

/** Why a chocolate may not bear a name; empty when it may. */
export const saidShortfalls = (kind: ChocolateKind, figures: ChocolateFigures): Sentence[] =>
  BOUNDS[kind].flatMap((bound) => {
    const value = measured(figures, bound.measure);
    const shown = say`${named(bound.measure)} is ${value.toDecimalPlaces(2).toString()} %`;
    if (bound.least !== undefined && value.lessThan(bound.least)) {
      return [say`${shown}, at least ${bound.least} % is needed`];
    }
    if (bound.most !== undefined && value.greaterThan(bound.most)) {
      return [say`${shown}, at most ${bound.most} % is allowed`];
    }
    return [];
  });

/** The same in plain English, for programs. */
export const shortfalls = (kind: ChocolateKind, figures: ChocolateFigures): string[] =>
  saidShortfalls(kind, figures).map(inEnglish);

/** Article 3(5) (from memory): what words of quality beside the name need. */
export const mayClaimQuality = (kind: ChocolateKind, figures: ChocolateFigures): boolean => {
  if (kind === 'couverture') return figures.fatFreeCocoa.greaterThanOrEqualTo(16);
  if (kind === 'chocolate') {
    return (
      totalCocoa(figures).greaterThanOrEqualTo(43) && figures.cocoaButter.greaterThanOrEqualTo(26)
    );
  }
  if (kind !== 'milk_chocolate') return false;
  return (
    totalCocoa(figures).greaterThanOrEqualTo(30) &&
    figures.milkSolids.greaterThanOrEqualTo(18) &&
    figures.milkFat.greaterThanOrEqualTo('4.5')
  );
};

/** Kinds that state their cocoa solids (Article 3(3)); white, filled and praline don't. */
export const statesCocoaSolids = (kind: ChocolateKind): boolean => kind !== 'white_chocolate';

export const isMilkKind = (kind: ChocolateKind): boolean =>
  kind.includes('milk') || kind === 'cream_chocolate';

/** "69 % minimum": downwards, because it is a promise of at least so much. */
export const minimumPercent = (percent: Decimal): string =>
  percent.toDecimalPlaces(0, Decimal.ROUND_FLOOR).toString();
