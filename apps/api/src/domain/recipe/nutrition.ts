import { NUTRIENTS, type Nutrient, type NutritionPer100g } from '../specification';
import { Decimal, ZERO } from '../units';
import type { BookItem, RecipeBook } from './book';
import { whatStays } from './kept';
import { linesInGrams } from './mix';
import type { RecipeContent } from './recipe';

/** Null where an ingredient doesn't state it: never read as zero. */
type Amounts = Readonly<Record<Nutrient, Decimal | null>>;

const amountsOf = (value: (nutrient: Nutrient) => Decimal | null): Amounts =>
  Object.fromEntries(NUTRIENTS.map((nutrient) => [nutrient, value(nutrient)])) as Amounts;

/**
 * Nutrients per 100 g of the product as designed, from specifications through losses. `outG` is what
 * the recipe's lines give; `alcoholG` what is left of the alcohol in it.
 */
export const designedNutrition = (
  content: RecipeContent,
  book: RecipeBook,
  outG: Decimal,
  alcoholG: Decimal,
): NutritionPer100g | null => {
  if (!outG.greaterThan(0)) return null;
  const { total } = totalAmounts(content, book, new Map());
  const per100g = amountsOf((nutrient) => total[nutrient]?.times(100).dividedBy(outG) ?? null);
  return { ...per100g, alcohol: alcoholG.times(100).dividedBy(outG) };
};

type Known = Map<string, Amounts>;

const totalAmounts = (
  content: RecipeContent,
  book: RecipeBook,
  known: Known,
): { total: Amounts; outG: Decimal } => {
  const lines = linesInGrams(content, book);
  const { shares, outG } = whatStays(content, lines);
  let total = amountsOf(() => ZERO);
  lines.forEach((line, index) => {
    const massG = line.massG.times(shares[index] ?? ZERO);
    if (massG.isZero()) return;
    const own = perGram(line.item, book, known);
    total = amountsOf((nutrient) => {
      const [sum, share] = [total[nutrient], own[nutrient]];
      return sum && share ? sum.plus(share.times(massG)) : null;
    });
  });
  return { total, outG };
};

const perGram = (item: BookItem, book: RecipeBook, known: Known): Amounts => {
  const before = known.get(item.id);
  if (before) return before;
  const made = item.recipe ? totalAmounts(item.recipe, book, known) : null;
  const own = amountsOf((nutrient) => {
    if (!made) return item.nutrition?.[nutrient]?.dividedBy(100) ?? null;
    return made.outG.isZero() ? null : (made.total[nutrient]?.dividedBy(made.outG) ?? null);
  });
  known.set(item.id, own);
  return own;
};
