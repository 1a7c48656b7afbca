import { Decimal } from '../../domain/units';
import { quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { planOf, readPlan, type VersionToMake } from './open-batch';

/**
 * Plans an open batch anew for what it keeps once others make the rest.
 * @param whole what the head and its parts are to make together; null where nobody said how much
 */
export const replan = async (
  tx: Tx,
  batchId: string,
  version: VersionToMake,
  keeps: Decimal,
  whole: Decimal | null,
): Promise<void> => {
  const { plan } = await tx.batch.findUniqueOrThrow({
    where: { id: batchId },
    select: { plan: true },
  });
  const { itemId } = version.recipe;
  const rescaled = {
    ...readPlan(plan),
    ...planOf(version, { itemId, plannedQuantity: quantityText(keeps) }),
    ...(whole === null ? {} : { whole: quantityText(whole) }),
  };
  await tx.batch.update({
    where: { id: batchId },
    data: { plan: rescaled, version: { increment: 1 } },
    select: { id: true },
  });
};
