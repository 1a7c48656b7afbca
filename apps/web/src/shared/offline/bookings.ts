import { ProblemError } from '../../api/problem';
import type { Watched } from '../../api/watched';
import { newId } from '../../api/new-id';
import { indexedStore } from './indexed-store';
import { sendWaiting, tryAgain, type Booking, type Outcome, type Sent } from './queue';
import { sendBooking, sendWatched } from './send';

export type Booked<T> =
  | { readonly kind: 'done'; readonly answer: T }
  | { readonly kind: 'waiting' }
  | { readonly kind: 'stopped' };

type Listener = (waiting: readonly Booking[]) => void;
const listeners = new Set<Listener>();
let waiting: readonly Booking[] | undefined;

const refresh = async (): Promise<void> => {
  const read = await indexedStore.all();
  waiting = read;
  listeners.forEach((listener) => listener(read));
};

/** Undefined until the tablet's store has been read: nobody may take that for "nothing waits". */
export const bookingsNow = (): readonly Booking[] | undefined => waiting;

export const watchBookings = (listener: Listener): (() => void) => {
  listeners.add(listener);
  void refresh();
  return () => void listeners.delete(listener);
};

/** One sender at a time on the device, over all tabs, so that the order holds. */
const alone = async (work: () => Promise<void>): Promise<void> => {
  if ('locks' in navigator) await navigator.locks.request('ballotin.bookings', work);
  else await work();
};

export const sendAll = (
  userId: string,
  told: (outcome: Outcome) => void = () => undefined,
  watched?: Watched,
): Promise<void> =>
  alone(async () => {
    const send = (booking: Booking): Promise<Sent> =>
      booking.key === watched?.id ? sendWatched(booking, watched.signal) : sendBooking(booking);
    try {
      await sendWaiting(indexedStore, send, userId, told);
    } finally {
      await refresh();
    }
  });

/**
 * Books: first on the tablet, then at the service. A refusal that comes at once is thrown, for the
 * form to show, and the booking is forgotten; without a connection it waits and the answer says so.
 * One that somebody looks on at can be stopped.
 */
export const book = async <T>(
  booking: Omit<Booking, 'key' | 'bookedAt' | 'refused'>,
  watched?: Watched,
): Promise<Booked<T>> => {
  const kept: Booking = {
    ...booking,
    key: watched?.id ?? newId(),
    bookedAt: new Date().toISOString(),
  };
  await indexedStore.put(kept);
  let mine: Outcome | undefined;
  const told = (outcome: Outcome): void => {
    if (outcome.booking.key === kept.key) mine = outcome;
  };
  await sendAll(booking.userId, told, watched);
  if (mine?.sent.kind === 'done') return { kind: 'done', answer: mine.sent.answer as T };
  if (mine?.sent.kind === 'refused') {
    await indexedStore.remove(kept.key);
    await refresh();
    throw new ProblemError(mine.sent.problem);
  }
  return { kind: mine?.sent.kind === 'stopped' ? 'stopped' : 'waiting' };
};

export const forget = async (booking: Booking): Promise<void> => {
  await indexedStore.remove(booking.key);
  await refresh();
};

export const again = async (booking: Booking): Promise<void> => {
  await tryAgain(indexedStore, booking);
  await refresh();
  await sendAll(booking.userId);
};
