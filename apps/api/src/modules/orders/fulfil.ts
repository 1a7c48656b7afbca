import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, RefusalError } from '../../platform/problems';
import { findOrder, sentByLine, sentOf, type StoredOrder } from './orders.repository';
import { named, say } from '../../domain/words/say';

/**
 * The order that a dispatch is sent for.
 * @throws RefusalError when it is not open, or somebody else’s
 */
export const orderToSend = async (
  tx: Tx,
  id: string,
  customerId: string | null,
): Promise<StoredOrder> => {
  const order = orNotFound(await findOrder(tx, id), 'order', id);
  if (order.state !== 'open') {
    throw new RefusalError({
      code: 'not-valid',
      detail: say`Order ${order.code} is ${named(order.state)}. Open it again, or send without naming it.`,
    });
  }
  if (order.customerId !== customerId) {
    throw new RefusalError({
      code: 'not-valid',
      detail: say`Order ${order.code} is for somebody else. Choose its customer, or another order.`,
    });
  }
  return order;
};

/** Closes an order of which everything has been sent; what is still missing keeps it open. */
export const closeWhenSent = async (tx: Tx, by: By, order: StoredOrder): Promise<void> => {
  const sent = sentByLine(order, await sentOf(tx, [order.id]));
  const whole = order.lines.every(({ id, quantity }) =>
    sent.get(id)?.greaterThanOrEqualTo(quantity.toString()),
  );
  if (!whole) return;
  await tx.order.update({
    where: { id: order.id },
    data: { state: 'done', version: { increment: 1 } },
  });
  noteInJournal(by, {
    action: 'order.changed',
    subjectKind: 'order',
    subjectId: order.code,
    detail: { state: 'done', because: say`everything was sent` },
  });
};
