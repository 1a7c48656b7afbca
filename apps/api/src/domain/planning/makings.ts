import type { PlanItem, PlanProblem, PlanRecipe } from './problem';
import { sizesOf, type Sizes, type Thousandths } from './sizes';

/** Something that can be taken: a lot, a begun batch, or what a planned making leaves over. */
export interface Supply {
  readonly from: { readonly lot: string } | { readonly batch: string } | { readonly slice: Slice };
  left: Thousandths;
  readonly readyDay: number;
  /** Last good day; Infinity when it keeps. */
  lastDay: number;
}

export interface Taken {
  readonly item: string;
  readonly from: Supply['from'] | 'bought';
  readonly quantity: Thousandths;
}

/** One making of one item on one day for one demand; slices of a day that last equally
 * long are one batch at the bench. */
export interface Slice {
  readonly item: string;
  readonly day: number;
  /** The latest day on which it could begin if nothing else were to be done. */
  readonly latestDay: number;
  readonly readyDay: number;
  readonly count: number;
  readonly good: Thousandths;
  readonly demand: string;
  readonly taken: Taken[];
  /** Last good day of what it makes, by its own life and by what went in. */
  lastDay: number;
}

export interface MadeItem {
  readonly item: PlanItem;
  readonly recipe: PlanRecipe;
  readonly sizes: Sizes;
}

export const madeItems = (problem: PlanProblem): Map<string, MadeItem> =>
  new Map(
    [...problem.items.values()].flatMap((item): [string, MadeItem][] =>
      item.recipe ? [[item.id, { item, recipe: item.recipe, sizes: sizesOf(item.recipe) }]] : [],
    ),
  );
