import type { Interchangeable, Substitute } from '../../domain/declaration';
import type { Tx } from '../../platform/database/prisma';
import { boughtNow } from './designed';
import type { LabelSettingsDto } from './label-settings.dto';

/** The pairs of the settings with what is bought now of each, so that both can be named. */
export const interchangeableOf = async (
  tx: Tx,
  { interchangeable }: LabelSettingsDto,
): Promise<Interchangeable[]> => {
  if (interchangeable.length === 0) return [];
  const ids = interchangeable.flatMap(({ itemId, orItemId }) => [itemId, orItemId]);
  const specifications = await boughtNow(tx, ids);
  const items = await tx.item.findMany({ where: { id: { in: ids } } });
  const names = new Map(items.map((item) => [item.id, item.name]));
  const one = (itemId: string): Substitute => ({
    itemId,
    itemName: names.get(itemId) ?? itemId,
    specification: specifications.get(itemId) ?? null,
  });
  return interchangeable.map(({ itemId, orItemId }) => [one(itemId), one(orItemId)] as const);
};
