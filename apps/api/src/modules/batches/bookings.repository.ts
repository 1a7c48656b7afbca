import type { StockShare } from '../../domain/stock';
import { type Decimal } from '../../domain/units';
import { decimalToDb } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import type { StoredDraw } from './batch-head.queries';

export interface DrawToBook {
  readonly batchId: string;
  readonly lotId: string;
  readonly role: string;
  readonly share: StockShare;
  readonly reason: string | null;
}

/** Books a draw; the database writes its movement and refuses what the lot doesn't have. */
export const bookDraw = async (tx: Tx, by: By, draw: DrawToBook): Promise<string> => {
  const id = newId();
  const { quantity, massG, cost } = draw.share;
  await tx.$executeRaw`
    INSERT INTO draw (id, batch_id, lot_id, role, quantity, mass_g, cost, reason, at, user_id)
    VALUES (${id}::uuid, ${draw.batchId}::uuid, ${draw.lotId}::uuid, ${draw.role},
      ${decimalToDb(quantity)}::numeric, ${decimalToDb(massG)}::numeric,
      ${decimalToDb(cost)}::numeric, ${draw.reason}, ${by.at}, ${by.userId}::uuid)`;
  return id;
};

/** Books the exact opposite of a draw: the goods go back to their lot. */
export const bookReversal = async (
  tx: Tx,
  by: By,
  draw: StoredDraw,
  reason: string,
): Promise<void> => {
  await tx.draw.create({
    data: {
      id: newId(),
      batchId: draw.batchId,
      lotId: draw.lotId,
      role: draw.role,
      quantity: decimalToDb(draw.quantity.negated()),
      massG: decimalToDb(draw.massG.negated()),
      cost: decimalToDb(draw.cost.negated()),
      reversesId: draw.id,
      reason,
      at: by.at,
      userId: by.userId,
    },
    select: { id: true },
  });
};

export interface LossToBook {
  readonly batchId: string;
  readonly kind: string;
  readonly massG: Decimal;
  readonly lotId: string | null;
  readonly note: string | null;
}

/** Books losses and gives their ids. */
export const bookLosses = async (
  tx: Tx,
  by: By,
  losses: readonly LossToBook[],
): Promise<string[]> => {
  if (losses.length === 0) return [];
  const ids = losses.map(() => newId());
  await tx.batchLoss.createMany({
    data: losses.map((loss, index) => ({
      id: ids[index] ?? newId(),
      batchId: loss.batchId,
      kind: loss.kind,
      massG: decimalToDb(loss.massG),
      lotId: loss.lotId,
      note: loss.note,
      at: by.at,
      userId: by.userId,
    })),
  });
  return ids;
};

/** Ends a batch in its state. The balance is checked by the database when the booking commits. */
export const endBatch = async (
  tx: Tx,
  by: By,
  batchId: string,
  end: {
    readonly state: 'finished' | 'abandoned';
    readonly labourMinutes?: string | null;
    readonly imbalanceReason?: string | null;
    readonly endReason?: string | null;
  },
): Promise<void> => {
  await tx.batch.update({
    where: { id: batchId },
    data: { ...end, endedAt: by.at, version: { increment: 1 } },
    select: { id: true },
  });
};
