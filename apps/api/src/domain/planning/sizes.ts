import { Decimal } from '../units';
import type { PlanRecipe } from './problem';

/**
 * Inside planning a quantity is a whole number of thousandths (milligrams, or thousandths of a
 * piece) in a JavaScript number: exact up to 9·10^15, which is nine thousand tonnes. Needs are
 * rounded up and yields down, so a plan is never short by rounding.
 */
export type Thousandths = number;

const THOUSAND = 1000;

export const thousandthsUp = (quantity: Decimal): Thousandths =>
  quantity.times(THOUSAND).ceil().toNumber();

export const thousandthsDown = (quantity: Decimal): Thousandths =>
  quantity.times(THOUSAND).floor().toNumber();

export const fromThousandths = (quantity: Thousandths): Decimal =>
  new Decimal(quantity).dividedBy(THOUSAND);

/**
 * What a making is counted in: trays for a cast, boxes (or loose pieces) for what is packed, and
 * milligrams for a filling, which can be cooked in any amount.
 */
export interface Sizes {
  /** Of each line of the recipe, what so many of them take. */
  readonly takenBy: (count: number) => readonly Thousandths[];
  /** Good output of so many of them. */
  readonly goodOf: (count: number) => Thousandths;
  /** The fewest that give at least so much good output. */
  readonly countFor: (good: Thousandths) => number;
  /** Grams, cavities or boxes in one of them: what minutes and lines are stated for. */
  readonly unitsPerCount: number;
}

export const sizesOf = (recipe: PlanRecipe): Sizes => {
  const sizes = recipe.step === 'cook' ? sizesOfFilling(recipe) : sizesOfPieces(recipe);
  return {
    goodOf: remembered(sizes.goodOf),
    countFor: remembered(sizes.countFor),
    takenBy: remembered((count) =>
      recipe.lines.map(({ quantityPerUnit }) =>
        thousandthsUp(quantityPerUnit.times(sizes.unitsOf(count))),
      ),
    ),
    unitsPerCount: sizes.unitsPerCount,
  };
};

/** The same few counts are asked for on every day that is tried, and decimals are slow to divide. */
const remembered = <T>(work: (of: number) => T): ((of: number) => T) => {
  const known = new Map<number, T>();
  return (of) => {
    const before = known.get(of);
    if (before !== undefined) return before;
    const result = work(of);
    known.set(of, result);
    return result;
  };
};

interface Counted extends Omit<Sizes, 'takenBy'> {
  readonly unitsOf: (count: number) => Decimal;
}

const sizesOfFilling = ({ goodRatio }: PlanRecipe): Counted => ({
  goodOf: (count) => thousandthsDown(goodRatio.times(count).dividedBy(THOUSAND)),
  countFor: (good) => new Decimal(good).dividedBy(goodRatio).ceil().toNumber(),
  unitsOf: (count) => new Decimal(count).dividedBy(THOUSAND),
  unitsPerCount: 1 / THOUSAND,
});

const sizesOfPieces = (recipe: PlanRecipe): Counted => {
  const perCount = recipe.tray?.cavities ?? 1;
  const goodOf = (count: number): Thousandths =>
    wholeBelow(recipe.goodRatio.times(perCount).times(count)) * THOUSAND;
  return {
    goodOf,
    countFor: (good) => {
      const wanted = Math.ceil(good / THOUSAND);
      const filled = wholeAbove(new Decimal(wanted).dividedBy(recipe.goodRatio));
      const count = Math.ceil(filled / perCount);
      return goodOf(count) >= good ? count : count + 1;
    },
    unitsOf: (count) => new Decimal(count).times(perCount),
    unitsPerCount: perCount,
  };
};

/** A whole number that a division missed by its last place is that whole number. */
const SETTLED_PLACES = 20;
const wholeBelow = (value: Decimal): number =>
  value.toDecimalPlaces(SETTLED_PLACES).floor().toNumber();
const wholeAbove = (value: Decimal): number =>
  value.toDecimalPlaces(SETTLED_PLACES).ceil().toNumber();
