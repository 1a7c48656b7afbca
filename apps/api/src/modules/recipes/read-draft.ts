import { refuseCircle, type RecipeContent } from '../../domain/recipe';
import type { Item } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { type LoadedBook, loadBookWithRows } from './recipe-book.queries';
import { contentOfDraft } from './recipe-content';
import type { RecipeVersionDto } from './recipes.dto';
import { loadComponents } from './recipes.repository';
import { say, type Sentence } from '../../domain/words/say';

const unfit = (detail: Sentence): RefusalError =>
  new RefusalError({ code: 'recipe-line-unfit', detail });

export interface ReadDraft {
  readonly item: Item;
  readonly content: RecipeContent;
  readonly loaded: LoadedBook;
}

/** Reads a typed recipe with everything that it reaches. @throws RefusalError for a wrong line */
export const readDraft = async (
  tx: Tx,
  itemId: string,
  dto: RecipeVersionDto,
): Promise<ReadDraft> => {
  const item = orNotFound(await tx.item.findUnique({ where: { id: itemId } }), 'item', itemId);
  const componentIds = dto.lines.map((line) => line.itemId);
  const parts = await tx.item.findMany({ where: { id: { in: componentIds } } });
  const units = new Map(parts.map((part) => [part.id, part.unit]));
  for (const id of componentIds) orNotFound(units.get(id), 'item', id);
  const content = contentOfDraft(dto, units);
  checkShape(item, content);
  checkLines(content, new Map(parts.map((part) => [part.id, part])));
  const names = new Map([item, ...parts].map((part) => [part.id, part.name]));
  orRefuse(refuseCircle(itemId, componentIds, await loadComponents(tx), names));
  return { item, content, loaded: await loadBookWithRows(tx, componentIds) };
};

/** Fillings are made by weight, pieces and boxes by the piece, packaging not at all. */
const checkShape = (item: Item, content: RecipeContent): void => {
  if (item.kind === 'packaging') throw unfit(say`${item.name} is packaging: it has no recipe.`);
  if (item.unit === 'pc' && content.yieldPieces === null) {
    throw unfit(say`${item.name} is kept by the piece: state how many pieces these lines give.`);
  }
  if (item.unit !== 'pc' && content.yieldPieces !== null) {
    throw unfit(say`${item.name} is kept by weight: state grams, not pieces.`);
  }
};

const checkLines = (content: RecipeContent, parts: ReadonlyMap<string, Item>): void => {
  for (const line of content.lines) {
    const part = parts.get(line.itemId);
    const name = part?.name ?? '';
    if (!line.quantity.greaterThan(0)) throw unfit(say`${name}: a quantity is more than nought.`);
    if (line.unit === 'pc' && !line.quantity.isInteger()) {
      throw unfit(say`${name} is kept by the piece: give a whole number.`);
    }
    if ((part?.kind === 'packaging') !== (line.role === 'packaging')) {
      throw unfit(say`${name}: packaging, and only packaging, has the role “packaging”.`);
    }
  }
};
