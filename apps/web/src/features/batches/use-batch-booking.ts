import { useBooking, type BookingOf } from '../../api/use-api';
import type { PostPath } from '../../api/client';
import type { components } from '../../api/schema';

export type Batch = components['schemas']['BatchView'];

export const laneOf = (batch: Pick<Batch, 'id'>): string => `batch-${batch.id}`;

/** Books at the bench: everything about one batch goes in order, in the batch's own lane. */
export const useBatchBooking = (batch: Batch) => {
  const book = useBooking();
  return <P extends PostPath>(path: P, body: BookingOf<P>['body'], label: string, at = {}) =>
    book({ path, at: { id: batch.id, ...at }, body, label, lane: laneOf(batch) });
};
