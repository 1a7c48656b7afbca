import {
  cook,
  makeUpOf,
  NOTHING,
  times,
  totalG,
  type CompositionRefusal,
  type MakeUp,
  type Pot,
  type PotStep,
} from '../composition';
import { ok, type Result } from '../refusals/result';
import { flowOf, type ScalingRefusal } from '../scaling';
import { Decimal, sum, ZERO } from '../units';
import type { BookItem, RecipeBook } from './book';
import type { RecipeContent } from './recipe';

export type MixRefusal = CompositionRefusal | ScalingRefusal;

/** A line in grams, with the item that it names. */
export interface LineInGrams {
  readonly item: BookItem;
  readonly role: string;
  readonly massG: Decimal;
}

/** Food lines of a recipe in grams. Pieces weigh what their item states, nothing when unknown. */
export const linesInGrams = (content: RecipeContent, book: RecipeBook): LineInGrams[] =>
  content.lines.flatMap((line) => {
    const item = book.get(line.itemId);
    if (!item || item.isPackaging || line.role === 'packaging') return [];
    const massG =
      line.unit === 'g' ? line.quantity : line.quantity.times(pieceMassG(item, book) ?? ZERO);
    return [{ item, role: line.role, massG }];
  });

/** Grams of one piece: as stated, or as its own recipe adds up; null when neither is known. */
export const pieceMassG = (item: BookItem, book: RecipeBook): Decimal | null => {
  if (item.pieceMassG) return item.pieceMassG;
  if (!item.recipe?.yieldPieces) return null;
  const grams = sum(linesInGrams(item.recipe, book).map((line) => line.massG));
  return grams.isZero() ? null : grams.dividedBy(item.recipe.yieldPieces);
};

/** Composition of things already mixed, per gram of each, worked out once. */
export type KnownMixes = Map<string, MakeUp>;

/**
 * Make-up of a recipe as designed, after its losses. Recipes kept by weight are cooked in order;
 * pieces and boxes are the sum of what lies in them.
 */
export const mixRecipe = (
  content: RecipeContent,
  book: RecipeBook,
  known: KnownMixes = new Map(),
): Result<Pot, MixRefusal> => {
  const lines = linesInGrams(content, book);
  const contents: MakeUp[] = [];
  for (const line of lines) {
    const mixed = contentOf(line.item, line.massG, book, known);
    if (!mixed.ok) return mixed;
    contents.push(mixed.value);
  }
  if (content.yieldPieces !== null) {
    return cook(contents.map((made) => ({ kind: 'add', content: made, infusion: false })));
  }
  const flow = flowOf(
    lines.map((line) => ({ massG: line.massG, infusion: line.role === 'infusion' })),
    content.losses,
  );
  if (!flow.ok) return flow;
  return cook(
    flow.value.steps.map((step): PotStep => {
      if (step.kind === 'add') {
        const infusion = lines[step.line]?.role === 'infusion';
        return { kind: 'add', content: contents[step.line] ?? NOTHING, infusion };
      }
      if (step.kind === 'strain') return { kind: 'strain', heldBackG: step.massG };
      return { kind: step.kind, massG: step.massG };
    }),
  );
};

const contentOf = (
  item: BookItem,
  massG: Decimal,
  book: RecipeBook,
  known: KnownMixes,
): Result<MakeUp, MixRefusal> => {
  if (!item.recipe) return ok(makeUpOf(item.composition, massG));
  const before = known.get(item.id);
  if (before) return ok(times(before, massG));
  const pot = mixRecipe(item.recipe, book, known);
  if (!pot.ok) return pot;
  const total = totalG(pot.value.content);
  if (!total.greaterThan(0)) return ok(makeUpOf(null, massG));
  const perGram = times(pot.value.content, new Decimal(1).dividedBy(total));
  known.set(item.id, perGram);
  return ok(times(perGram, massG));
};
