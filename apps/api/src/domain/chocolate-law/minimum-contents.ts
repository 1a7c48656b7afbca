import type { ChocolateKind } from '../specification';
import { Decimal } from '../units';

/** What a chocolate is made of, per cent of the chocolate with other edible matter taken out. */
export interface ChocolateFigures {
  readonly cocoaButter: Decimal;
  readonly fatFreeCocoa: Decimal;
  readonly milkSolids: Decimal;
  readonly milkFat: Decimal;
  /** Per cent of the whole: hazelnuts, and all nuts together. */
  readonly hazelnuts: Decimal;
  readonly nuts: Decimal;
}

type Measure =
  | 'total dry cocoa'
  | 'cocoa butter'
  | 'dry fat-free cocoa'
  | 'dry milk solids'
  | 'milk fat'
  | 'cocoa butter and milk fat together'
  | 'hazelnuts'
  | 'all nuts';

interface Bound {
  readonly measure: Measure;
  readonly least?: string;
  readonly most?: string;
}

const least = (measure: Measure, value: string): Bound => ({ measure, least: value });
const most = (measure: Measure, value: string): Bound => ({ measure, most: value });

const MILK = [
  least('total dry cocoa', '25'),
  least('dry fat-free cocoa', '2.5'),
  least('dry milk solids', '14'),
];
const MILK_FATS = [least('milk fat', '3.5'), least('cocoa butter and milk fat together', '25')];

/**
 * Directive 2000/36/EC, Annex I Part A, points 2 to 6 (read in full in the French decree 76-692 and
 * in SI 2003/1659, Schedule 1).
 */
const BOUNDS: Readonly<Record<ChocolateKind, readonly Bound[]>> = {
  chocolate: [
    least('total dry cocoa', '35'),
    least('cocoa butter', '18'),
    least('dry fat-free cocoa', '14'),
  ],
  chocolate_vermicelli: [
    least('total dry cocoa', '32'),
    least('cocoa butter', '12'),
    least('dry fat-free cocoa', '14'),
  ],
  couverture: [
    least('total dry cocoa', '35'),
    least('cocoa butter', '31'),
    least('dry fat-free cocoa', '2.5'),
  ],
  gianduja: [
    least('total dry cocoa', '32'),
    least('dry fat-free cocoa', '8'),
    most('dry milk solids', '5'),
    least('hazelnuts', '20'),
    most('hazelnuts', '40'),
    most('all nuts', '60'),
  ],
  milk_chocolate: [...MILK, ...MILK_FATS],
  milk_chocolate_vermicelli: [
    least('total dry cocoa', '20'),
    least('dry milk solids', '12'),
    least('cocoa butter and milk fat together', '12'),
  ],
  milk_couverture: [
    ...MILK,
    least('milk fat', '3.5'),
    least('cocoa butter and milk fat together', '31'),
  ],
  milk_gianduja: [
    least('dry milk solids', '10'),
    least('hazelnuts', '15'),
    most('hazelnuts', '40'),
    most('all nuts', '60'),
  ],
  cream_chocolate: [...MILK, least('milk fat', '5.5'), ...MILK_FATS.slice(1)],
  skimmed_milk_chocolate: [...MILK, most('milk fat', '1'), ...MILK_FATS.slice(1)],
  family_milk_chocolate: [
    least('total dry cocoa', '20'),
    least('dry fat-free cocoa', '2.5'),
    least('dry milk solids', '20'),
    least('milk fat', '5'),
    least('cocoa butter and milk fat together', '25'),
  ],
  white_chocolate: [
    least('cocoa butter', '20'),
    least('dry milk solids', '14'),
    least('milk fat', '3.5'),
  ],
  powdered_chocolate: [],
  drinking_chocolate: [],
};

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
export const shortfalls = (kind: ChocolateKind, figures: ChocolateFigures): string[] =>
  BOUNDS[kind].flatMap((bound) => {
    const value = measured(figures, bound.measure);
    const shown = `${bound.measure} is ${value.toDecimalPlaces(2).toString()} %`;
    if (bound.least !== undefined && value.lessThan(bound.least)) {
      return [`${shown}, at least ${bound.least} % is needed`];
    }
    if (bound.most !== undefined && value.greaterThan(bound.most)) {
      return [`${shown}, at most ${bound.most} % is allowed`];
    }
    return [];
  });

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
  /milk/.test(kind) || kind === 'cream_chocolate';

/** "69 % minimum": downwards, because it is a promise of at least so much. */
export const minimumPercent = (percent: Decimal): string =>
  percent.toDecimalPlaces(0, Decimal.ROUND_FLOOR).toString();
