import { percentOf, totalFatG, totalSugarsG, type Caution } from '../composition';
import type { Allergen, Presence } from '../specification';
import type { Decimal } from '../units';
import { say } from '../words/say';
import { designedAllergens, leavesOf, type DesignedAllergen } from './allergens';
import { analyseRecipe, type RecipeAnalysis } from './analysis';
import type { BookItem, RecipeBook } from './book';
import type { RecipeContent } from './recipe';

export interface AllergenChange {
  readonly allergen: Allergen;
  readonly before: Presence;
  readonly after: Presence;
  /** The product would hold, or may hold, what it didn't: its label must change. */
  readonly isWorse: boolean;
}

export interface FigureChange {
  readonly figure: 'water' | 'totalFat' | 'totalSugars' | 'alcohol' | 'waterActivity' | 'sweetness';
  /** Per cent of the product; water activity as a fraction. Null: no number. */
  readonly before: Decimal | null;
  readonly after: Decimal | null;
}

export interface Substitution {
  readonly allergens: readonly AllergenChange[];
  readonly figures: readonly FigureChange[];
  /** Of the product with the change in it. */
  readonly cautions: readonly Caution[];
}

/** From none to worst. Unknown counts as worse than a trace: nobody can answer for it. */
const RANK: Readonly<Record<Presence, number>> = {
  absent: 0,
  may_contain: 1,
  unknown: 2,
  contains: 3,
};

/** A recipe with all that it reaches, before or after the change. */
export interface Designed {
  readonly content: RecipeContent;
  readonly book: RecipeBook;
  /** What is really inside of a lot that was made here, beyond what its own recipe says. */
  readonly alsoInside?: readonly BookItem[];
}

/**
 * What changes in the product when one of its ingredients is replaced or another is added. Allergens
 * are always compared; figures only when both can be computed, and why not is a caution.
 */
export const compareSubstitution = (before: Designed, after: Designed): Substitution => {
  const [was, is] = [analysed(before), analysed(after)];
  return {
    allergens: allergenChanges(allergensOf(before), allergensOf(after)),
    figures: was.ok && is.ok ? figureChanges(was.value, is.value) : [],
    cautions: is.ok
      ? is.value.cautions
      : [{ code: 'not-computed', level: 'warning', text: say`No figures: ${is.refusal.detail}` }],
  };
};

const analysed = ({ content, book }: Designed): ReturnType<typeof analyseRecipe> =>
  analyseRecipe({ content, book, readings: [], ph: null });

const allergensOf = ({ content, book, alsoInside }: Designed): DesignedAllergen[] =>
  designedAllergens([...leavesOf(content, book), ...(alsoInside ?? [])]);

const figureChanges = (before: RecipeAnalysis, after: RecipeAnalysis): FigureChange[] => {
  const changed = figuresOf(after);
  return figuresOf(before).map(([figure, value], index) => ({
    figure,
    before: value,
    after: changed[index]?.[1] ?? null,
  }));
};

const allergenChanges = (
  before: readonly DesignedAllergen[],
  after: readonly DesignedAllergen[],
): AllergenChange[] => {
  const presence = (rows: readonly DesignedAllergen[], allergen: Allergen): Presence =>
    rows.find((row) => row.allergen === allergen)?.presence ?? 'absent';
  const named = [...new Set([...before, ...after].map((row) => row.allergen))];
  return named.flatMap((allergen) => {
    const [was, is] = [presence(before, allergen), presence(after, allergen)];
    return was === is ? [] : [{ allergen, before: was, after: is, isWorse: RANK[is] > RANK[was] }];
  });
};

const figuresOf = (
  analysis: RecipeAnalysis,
): (readonly [FigureChange['figure'], Decimal | null])[] => {
  const makeUp = analysis.pot.content;
  const { estimate } = analysis;
  return [
    ['water', percentOf(makeUp.parts.water, makeUp)],
    ['totalFat', percentOf(totalFatG(makeUp), makeUp)],
    ['totalSugars', percentOf(totalSugarsG(makeUp), makeUp)],
    ['alcohol', percentOf(makeUp.parts.alcohol, makeUp)],
    ['waterActivity', estimate?.status === 'estimated' ? estimate.value : null],
    ['sweetness', analysis.relativeSweetness],
  ];
};
