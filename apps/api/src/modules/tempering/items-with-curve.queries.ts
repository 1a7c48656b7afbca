import type { Item } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';

export type ItemWithSettings = Pick<Item, 'id' | 'name' | 'settings'>;

/** Items for which somebody said which curve applies, by name. */
export const itemsWithCurve = (tx: Pick<Tx, '$queryRaw'>): Promise<ItemWithSettings[]> =>
  tx.$queryRaw<ItemWithSettings[]>`
    SELECT id::text AS id, name, settings FROM item
    WHERE settings -> 'tempering' ->> 'product' IS NOT NULL ORDER BY name`;
