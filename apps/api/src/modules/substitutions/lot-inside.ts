import type { BookItem } from '../../domain/recipe';
import type { Tx } from '../../platform/database/prisma';
import { statedBy } from '../recipes';
import type { LotForUse } from '../stock';

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

interface InsideRow {
  readonly itemId: string;
  readonly itemName: string;
  readonly specificationId: string | null;
}

/**
 * The bought lots that really went into a lot made here, each by its own specification: something
 * else may have stood in for what its recipe names.
 */
export const loadInside = async (tx: Tx, lot: LotForUse): Promise<BookItem[]> => {
  const rows = await tx.$queryRaw<InsideRow[]>`
    WITH RECURSIVE behind AS (
      SELECT id, batch_id FROM lot WHERE id = ${lot.id}::uuid
      UNION
      SELECT source.id, source.batch_id FROM behind
        JOIN draw ON draw.batch_id = behind.batch_id AND draw.reverses_id IS NULL
          AND NOT EXISTS (SELECT 1 FROM draw back WHERE back.reverses_id = draw.id)
        JOIN lot source ON source.id = draw.lot_id
    )
    SELECT DISTINCT lot.item_id AS "itemId", item.name AS "itemName",
      lot.specification_id AS "specificationId"
    FROM behind JOIN lot ON lot.id = behind.id JOIN item ON item.id = lot.item_id
    WHERE lot.batch_id IS NULL AND lot.id <> ${lot.id}::uuid AND item.kind = 'ingredient'`;
  const ids = rows.flatMap(({ specificationId }) => specificationId ?? []);
  const specifications = await tx.specification.findMany({
    where: { id: { in: ids } },
    include: { allergens: true },
  });
  const byId = new Map(specifications.map((row) => [row.id, row]));
  return rows.map((row): BookItem => {
    const found = byId.get(row.specificationId ?? '');
    return {
      id: row.itemId,
      name: row.itemName,
      unit: 'g',
      pieceMassG: null,
      isPackaging: false,
      composition: null,
      nutrition: null,
      // Without a specification nobody knows: unknown is never absent.
      allergens: found ? statedBy(found).allergens : null,
      isGeneric: false,
      recipe: null,
    };
  });
};
