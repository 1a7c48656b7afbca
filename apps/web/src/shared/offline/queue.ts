import { without } from '../formats/without';
import type { Problem } from '../../api/problem';

/** One booking as it waits on the tablet. The key makes the service carry it out once only. */
export interface Booking {
  readonly key: string;
  readonly path: string;
  readonly body: unknown;
  /** What it is, in the words of the person who booked it. */
  readonly label: string;
  /** Bookings of one lane (one batch, one delivery) depend on each other. */
  readonly lane: string;
  /** Who was signed in: bookings are never sent under another person's name. */
  readonly userId: string;
  readonly bookedAt: string;
  readonly refused?: Problem;
}

export type Sent =
  | { readonly kind: 'done'; readonly answer: unknown }
  | { readonly kind: 'refused'; readonly problem: Problem }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'unreachable' }
  | { readonly kind: 'signed-out' };

export interface BookingStore {
  readonly all: () => Promise<readonly Booking[]>;
  readonly put: (booking: Booking) => Promise<void>;
  readonly remove: (key: string) => Promise<void>;
}

export type Send = (booking: Booking) => Promise<Sent>;

export interface Outcome {
  readonly booking: Booking;
  readonly sent: Sent;
}

/**
 * Sends what waits, oldest first, one at a time. A refused booking stays, with its reason, and holds
 * back the later ones of its lane, which were made believing that it had happened; other lanes go
 * on. When the service can't be reached everything stays as it is.
 */
export const sendWaiting = async (
  store: BookingStore,
  send: Send,
  userId: string,
  told: (outcome: Outcome) => void,
): Promise<void> => {
  const blocked = new Set<string>();
  for (const booking of await store.all()) {
    if (booking.refused !== undefined) blocked.add(booking.lane);
    if (blocked.has(booking.lane)) continue;
    if (booking.userId !== userId) {
      blocked.add(booking.lane);
      continue;
    }
    const sent = await send(booking);
    if (sent.kind === 'done' || sent.kind === 'stopped') await store.remove(booking.key);
    if (sent.kind === 'refused') {
      await store.put({ ...booking, refused: sent.problem });
      blocked.add(booking.lane);
    }
    told({ booking, sent });
    if (sent.kind === 'unreachable' || sent.kind === 'signed-out') return;
  }
};

/** Puts a refused booking back among those that wait, to be tried again as it is. */
export const tryAgain = async (store: BookingStore, booking: Booking): Promise<void> => {
  await store.put(without(booking, 'refused'));
};
