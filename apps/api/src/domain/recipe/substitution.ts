import { percentOf, totalFatG, totalSugarsG } from '../composition';
import type { Allergen, Presence } from '../specification';
import type { Decimal } from '../units';
import type { DesignedAllergen } from './allergens';
import type { RecipeAnalysis } from './analysis';

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
}

/** From none to worst. Unknown counts as worse than a trace: nobody can answer for it. */
const RANK: Readonly<Record<Presence, number>> = {
  absent: 0,
  may_contain: 1,
  unknown: 2,
  contains: 3,
};

/** What changes in the product, as designed, when one of its ingredients is replaced. */
export const compareSubstitution = (
  before: RecipeAnalysis,
  after: RecipeAnalysis,
): Substitution => ({
  allergens: allergenChanges(before.allergens, after.allergens),
  figures: figuresOf(before).map(([figure, value], index) => ({
    figure,
    before: value,
    after: figuresOf(after)[index]?.[1] ?? null,
  })),
});

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
