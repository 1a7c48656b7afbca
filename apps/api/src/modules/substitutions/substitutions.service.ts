import { Injectable } from '@nestjs/common';
import {
  analyseRecipe,
  compareSubstitution,
  type BookItem,
  type RecipeAnalysis,
  type RecipeBook,
  type RecipeContent,
} from '../../domain/recipe';
import { checkUsable } from '../../domain/stock';
import { Decimal, sum } from '../../domain/units';
import type { Item, Prisma } from '../../generated/prisma/client';
import { decimalFromDb, moneyText, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { readPlan } from '../batches';
import { contentOfVersion, findVersion, loadBook, statedBy } from '../recipes';
import { loadLotForUse, type LotForUse } from '../stock';
import type { SubstitutionDto, SubstitutionView } from './substitutions.dto';
import { say } from '../../domain/words/say';

const GRAMS_PER_KG = 1000;

/** Compares a lot with the component that a batch's recipe asks for, before it is drawn. */
@Injectable()
export class SubstitutionsService {
  constructor(private readonly transactions: Transactions) {}

  compare(batchId: string, dto: SubstitutionDto): Promise<SubstitutionView> {
    return this.transactions.read(async (tx) => {
      const found = await tx.batch.findUnique({ where: { id: batchId } });
      const batch = orNotFound(found, 'batch', batchId);
      const version = orNotFound(
        batch.recipeVersionId === null ? null : await findVersion(tx, batch.recipeVersionId),
        'recipe of this batch',
        batch.code,
      );
      const content = contentOfVersion(version);
      const line = content.lines.find((row) => row.itemId === dto.itemId);
      const original = version.lines.find((row) => row.componentId === dto.itemId)?.component;
      if (!line || !original) throw notInRecipe(version.recipe.item.name);
      const lot = await loadLotForUse(tx, dto.lotCode);
      const changed = await analyseBoth(tx, content, dto.itemId, lot);
      const compared = compareSubstitution(changed.before, changed.after);
      const planned = plannedOf(batch.plan, dto.itemId, line.quantity);
      const usable = checkUsable(lot, this.transactions.today());
      return {
        originalName: original.name,
        substituteName: lot.itemName,
        lotCode: lot.code,
        plannedQuantity: quantityText(planned),
        onHandQuantity: quantityText(lot.onHand.quantity),
        notUsable: usable.ok ? null : usable.refusal.detail,
        allergens: compared.allergens.map((row) => ({ ...row })),
        figures: compared.figures.map((row) => ({
          figure: row.figure,
          before: row.before?.toFixed(2) ?? null,
          after: row.after?.toFixed(2) ?? null,
        })),
        originalCost: costAtPrice(original, planned),
        substituteCost: costOfLot(lot, planned),
        cautions: changed.after.cautions.map((row) => ({ ...row })),
      };
    });
  }
}

const notInRecipe = (name: string): RefusalError =>
  new RefusalError({
    code: 'not-in-recipe',
    detail: say`The recipe of ${name} has no such component, so there is nothing to replace.`,
  });

/** The product as its recipe says, and with this lot's own specification in place of a component. */
const analyseBoth = async (
  tx: Tx,
  content: RecipeContent,
  itemId: string,
  lot: LotForUse,
): Promise<{ before: RecipeAnalysis; after: RecipeAnalysis }> => {
  const ids = [...content.lines.map((line) => line.itemId), lot.itemId];
  const book = await loadBook(tx, ids);
  const analyse = (by: RecipeBook): RecipeAnalysis =>
    orRefuse(analyseRecipe({ content, book: by, readings: [], ph: null }));
  const replaced = new Map(book).set(itemId, await asReceived(tx, book, itemId, lot));
  return { before: analyse(book), after: analyse(replaced) };
};

/** The item of the lot, in the place of the component, by the specification that the lot pins. */
const asReceived = async (
  tx: Tx,
  book: RecipeBook,
  itemId: string,
  lot: LotForUse,
): Promise<BookItem> => {
  const item = orNotFound(book.get(lot.itemId), 'item', lot.itemId);
  const stored = await tx.lot.findUnique({
    where: { id: lot.id },
    include: { specification: { include: { allergens: true } } },
  });
  const specification = stored?.specification;
  if (!specification) return { ...item, id: itemId };
  const stated = statedBy(specification);
  const composition = stated.composition ?? item.composition;
  const isGeneric = stated.composition === null && item.isGeneric;
  return { ...item, ...stated, composition, isGeneric, id: itemId };
};

const plannedOf = (plan: Prisma.JsonValue, itemId: string, written: Decimal): Decimal => {
  const lines = readPlan(plan).lines.filter((line) => line.itemId === itemId);
  return lines.length === 0 ? written : sum(lines.map((line) => new Decimal(line.quantity)));
};

const costAtPrice = (item: Item, quantity: Decimal): string | null => {
  if (item.replacementPrice === null) return null;
  const price = decimalFromDb(item.replacementPrice).times(quantity);
  return moneyText(item.unit === 'pc' ? price : price.dividedBy(GRAMS_PER_KG));
};

const costOfLot = (lot: LotForUse, quantity: Decimal): string | null => {
  const { onHand } = lot;
  if (onHand.quantity.isZero()) return null;
  return moneyText(onHand.cost.times(quantity).dividedBy(onHand.quantity));
};
