import {
  compareSubstitution,
  type BookItem,
  type RecipeContent,
  type Substitution,
} from '../../domain/recipe';
import { Decimal, sum } from '../../domain/units';
import { say } from '../../domain/words/say';
import type { Item } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound, RefusalError } from '../../platform/problems';
import { loadBook } from '../recipes';
import type { LotForUse } from '../stock';
import type { BatchToCompare } from './batch-to-compare.queries';
import { asReceived, loadInside } from './lot-inside';

/** A lot that would go into a batch, in place of a component or beside them. */
export interface LotToCompare {
  readonly batch: BatchToCompare;
  readonly lot: LotForUse;
  readonly insteadOf: string | null;
  /** Of an addition, in the lot's unit; null: not weighed yet. */
  readonly quantity: Decimal | null;
}

export interface Compared extends Substitution {
  readonly original: Item | null;
  /** What the plan takes of the original, or what is added. */
  readonly planned: Decimal | null;
}

/** The product as its recipe or its tank says, and with this lot in it. */
export const compareLot = async (tx: Tx, asked: LotToCompare): Promise<Compared> => {
  const { content, components, product } = asked.batch;
  const line = content.lines.find(({ itemId }) => itemId === asked.insteadOf);
  const original = components.find(({ id }) => id === asked.insteadOf);
  if (asked.insteadOf !== null && !line) throw notInRecipe(product.name);
  const book = await loadBook(tx, [...content.lines.map(({ itemId }) => itemId), asked.lot.itemId]);
  const known = orNotFound(book.get(asked.lot.itemId), 'item', asked.lot.itemName);
  // A name of its own: what the lot is made of may hold the very component that it stands in for.
  const item = { ...(await asReceived(tx, known, asked.lot)), id: `lot ${asked.lot.code}` };
  const compared = compareSubstitution(
    { content, book },
    {
      content: line ? replaced(content, line.itemId, item.id) : added(content, item, asked),
      book: new Map(book).set(item.id, item),
      alsoInside: await loadInside(tx, asked.lot),
    },
  );
  return {
    ...compared,
    figures: line || asked.quantity ? compared.figures : [],
    original: original ?? null,
    planned: line ? plannedOf(asked.batch, line.itemId, line.quantity) : asked.quantity,
  };
};

const notInRecipe = (name: string): RefusalError =>
  new RefusalError({
    code: 'not-in-recipe',
    detail: say`The recipe of ${name} has no such component, so there is nothing to replace.`,
  });

const plannedOf = ({ planned }: BatchToCompare, itemId: string, written: Decimal): Decimal => {
  const lines = planned.filter((line) => line.itemId === itemId);
  return lines.length === 0 ? written : sum(lines.map(({ quantity }) => quantity));
};

const replaced = (content: RecipeContent, itemId: string, by: string): RecipeContent => ({
  ...content,
  lines: content.lines.map((line) => (line.itemId === itemId ? { ...line, itemId: by } : line)),
});

/** The recipe with one line more, as much of it as there is in a batch of the planned size. */
const added = (
  content: RecipeContent,
  item: BookItem,
  { batch, quantity }: LotToCompare,
): RecipeContent => {
  const [first] = content.lines;
  const planned = first ? plannedOf(batch, first.itemId, first.quantity) : new Decimal(0);
  const written = sum(
    content.lines.filter(({ itemId }) => itemId === first?.itemId).map((line) => line.quantity),
  );
  const scale = planned.isZero() ? new Decimal(1) : written.dividedBy(planned);
  const line = {
    itemId: item.id,
    unit: item.unit,
    quantity: (quantity ?? new Decimal(0)).times(scale),
    role: item.isPackaging ? 'packaging' : 'base',
  };
  return { ...content, lines: [...content.lines, line] };
};
