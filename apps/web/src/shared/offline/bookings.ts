import { ProblemError } from '../../api/problem';
import { indexedStore } from './indexed-store';
import { sendWaiting, tryAgain, type Booking, type Outcome } from './queue';
import { sendBooking } from './send';

export type Booked<T> =
  { readonly kind: 'done'; readonly answer: T } | { readonly kind: 'waiting' };

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
): Promise<void> =>
  alone(async () => {
    try {
      await sendWaiting(indexedStore, sendBooking, userId, told);
    } finally {
      await refresh();
    }
  });

/**
 * Books: first on the tablet, then at the service. A refusal that comes at once is thrown, for the
 * form to show, and the booking is forgotten; without a connection it waits and the answer says so.
 */
export const book = async <T>(
  booking: Omit<Booking, 'key' | 'bookedAt' | 'refused'>,
): Promise<Booked<T>> => {
  const kept: Booking = {
    ...booking,
    key: crypto.randomUUID(),
    bookedAt: new Date().toISOString(),
  };
  await indexedStore.put(kept);
  let mine: Outcome | undefined;
  await sendAll(booking.userId, (outcome) => {
    if (outcome.booking.key === kept.key) mine = outcome;
  });
  if (mine?.sent.kind === 'done') return { kind: 'done', answer: mine.sent.answer as T };
  if (mine?.sent.kind === 'refused') {
    await indexedStore.remove(kept.key);
    await refresh();
    throw new ProblemError(mine.sent.problem);
  }
  return { kind: 'waiting' };
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
