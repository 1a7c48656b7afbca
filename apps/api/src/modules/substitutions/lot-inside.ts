import type { BookItem } from '../../domain/recipe';
import type { Tx } from '../../platform/database/prisma';
import { statedBy } from '../recipes';
import type { LotForUse } from '../stock';
import { loadSubgraph } from '../tracing';

/** The item of the lot by the specification that the lot pins, which may not be the newest. */
export const asReceived = async (tx: Tx, item: BookItem, lot: LotForUse): Promise<BookItem> => {
  const stored = await tx.lot.findUnique({
    where: { id: lot.id },
    include: { specification: { include: { allergens: true } } },
  });
  const specification = stored?.specification;
  if (!specification) return item;
  const stated = statedBy(specification);
  const composition = stated.composition ?? item.composition;
  return {
    ...item,
    ...stated,
    composition,
    isGeneric: stated.composition === null && item.isGeneric,
  };
};

/**
 * The bought lots that really went into a lot made here, each by its own specification: something
 * else may have stood in for what its recipe names, and a tank's lot before may be in its heel.
 */
export const loadInside = async (tx: Tx, lot: LotForUse): Promise<BookItem[]> => {
  const { lots } = await loadSubgraph(tx, [lot.id], 'back');
  const bought = await tx.lot.findMany({
    where: {
      id: { in: lots.map(([id]) => id), not: lot.id },
      batchId: null,
      item: { kind: 'ingredient' },
    },
    distinct: ['itemId', 'specificationId'],
    select: {
      item: { select: { id: true, name: true } },
      specification: { include: { allergens: true } },
    },
  });
  return bought.map(({ item, specification }): BookItem => ({
    id: item.id,
    name: item.name,
    unit: 'g',
    pieceMassG: null,
    isPackaging: false,
    composition: null,
    nutrition: null,
    // Without a specification nobody knows: unknown is never absent.
    allergens: specification ? statedBy(specification).allergens : null,
    isGeneric: false,
    recipe: null,
  }));
};
