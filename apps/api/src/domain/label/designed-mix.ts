import type { IngoingMix } from '../declaration';
import { linesInGrams, type BookItem, type RecipeBook, type RecipeContent } from '../recipe';
import { whatStays } from '../recipe/kept';
import type { Specification } from '../specification';
import { Decimal, sum, ZERO } from '../units';

/** Grams of bought ingredients for what a recipe gives, as `IngoingLot` counts them. */
interface Grams {
  readonly ingoingG: Decimal;
  readonly massG: Decimal;
}

interface Made {
  readonly grams: ReadonlyMap<string, Grams>;
  readonly outG: Decimal;
}

/**
 * The mix of a recipe as designed: every bought ingredient at any depth, by the weight that went
 * into the bowl, undiluted by steam. A strained infusion stays in with no weight, so that neither its
 * name nor its allergens are lost.
 */
export const designedMix = (
  content: RecipeContent,
  book: RecipeBook,
  specifications: ReadonlyMap<string, Specification>,
): IngoingMix => {
  const made = ingredientsOf(content, book, new Map());
  const lots = [...made.grams].map(([itemId, grams]) => ({
    lotId: itemId,
    lotCode: 'as designed',
    itemId,
    itemName: book.get(itemId)?.name ?? itemId,
    ...grams,
    processingAid: false,
    specification: specifications.get(itemId) ?? null,
    via: 'draw' as const,
  }));
  return { lots, finishedG: made.outG };
};

const ingredientsOf = (
  content: RecipeContent,
  book: RecipeBook,
  known: Map<string, Made>,
): Made => {
  const lines = linesInGrams(content, book);
  const { shares, outG } = whatStays(content, lines);
  const kept = lines.map((line, index) => line.massG.times(shares[index] ?? ZERO));
  const all = sum(kept);
  const thinning = all.isZero() ? ZERO : outG.dividedBy(all);
  const grams = new Map<string, Grams>();
  lines.forEach(({ item }, index) => {
    const ingoingG = kept[index] ?? ZERO;
    for (const [id, own] of perGram(item, book, known)) {
      const before = grams.get(id) ?? { ingoingG: ZERO, massG: ZERO };
      grams.set(id, {
        ingoingG: before.ingoingG.plus(own.ingoingG.times(ingoingG)),
        massG: before.massG.plus(own.massG.times(ingoingG).times(thinning)),
      });
    }
  });
  return { grams, outG };
};

/** What one gram of an item holds: itself when it is bought, its ingredients when it is made. */
const perGram = (
  item: BookItem,
  book: RecipeBook,
  known: Map<string, Made>,
): ReadonlyMap<string, Grams> => {
  if (!item.recipe) return new Map([[item.id, { ingoingG: ONE, massG: ONE }]]);
  const made = known.get(item.id) ?? ingredientsOf(item.recipe, book, known);
  known.set(item.id, made);
  if (made.outG.isZero()) return new Map();
  return new Map(
    [...made.grams].map(([id, own]) => [
      id,
      {
        ingoingG: own.ingoingG.dividedBy(made.outG),
        massG: own.massG.dividedBy(made.outG),
      },
    ]),
  );
};

const ONE = new Decimal(1);
