import { shareOf, type StockShare } from '../../domain/stock';
import { Decimal } from '../../domain/units';
import { decimalFromDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import * as repository from './recalls.repository';

export interface StillOut {
  readonly lineId: string;
  readonly share: StockShare;
}

const less = (share: StockShare, other: StockShare): StockShare => ({
  quantity: share.quantity.minus(other.quantity),
  massG: share.massG.minus(other.massG),
  cost: share.cost.minus(other.cost),
});

const shareFromDb = (row: {
  readonly quantity: Parameters<typeof decimalFromDb>[0];
  readonly massG: Parameters<typeof decimalFromDb>[0];
  readonly cost: Parameters<typeof decimalFromDb>[0];
}): StockShare => ({
  quantity: decimalFromDb(row.quantity),
  massG: decimalFromDb(row.massG),
  cost: decimalFromDb(row.cost),
});

/** What of a lot is still with one receiver, dispatch line by dispatch line. */
export const stillOut = async (
  tx: Tx,
  lotId: string,
  customerId: string | null,
): Promise<StillOut[]> => {
  const lines = await repository.linesSentTo(tx, lotId, customerId);
  const returned = await repository.returnedOf(
    tx,
    lines.map((line) => line.id),
  );
  return lines.map((line) => ({
    lineId: line.id,
    share: returned
      .filter((movement) => movement.dispatchLineId === line.id)
      .reduce((share, movement) => less(share, shareFromDb(movement)), shareFromDb(line)),
  }));
};

export interface PartBack extends StillOut {
  readonly back: StockShare;
}

/** Lays what came back on the lines, oldest first. */
export const spread = (lines: readonly StillOut[], quantity: Decimal): PartBack[] => {
  let left = quantity;
  const parts: PartBack[] = [];
  for (const line of lines) {
    const here = Decimal.min(left, line.share.quantity);
    if (!here.greaterThan(0)) continue;
    parts.push({ ...line, back: shareOf(line.share, here) });
    left = left.minus(here);
  }
  return parts;
};
