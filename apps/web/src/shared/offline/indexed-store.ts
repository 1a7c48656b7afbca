import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { Booking, BookingStore } from './queue';

interface Tablet extends DBSchema {
  bookings: {
    key: number;
    value: Booking & { readonly position?: number };
    indexes: { key: string };
  };
}

let opened: Promise<IDBPDatabase<Tablet>> | undefined;

const tablet = (): Promise<IDBPDatabase<Tablet>> =>
  (opened ??= openDB<Tablet>('ballotin', 1, {
    upgrade: (database) => {
      const bookings = database.createObjectStore('bookings', {
        keyPath: 'position',
        autoIncrement: true,
      });
      bookings.createIndex('key', 'key', { unique: true });
    },
  }));

/** Bookings in IndexedDB, in the order in which they were made; they survive a reload and a crash. */
export const indexedStore: BookingStore = {
  all: async () => (await tablet()).getAll('bookings'),
  put: async (booking) => {
    const change = (await tablet()).transaction('bookings', 'readwrite');
    const position = await change.store.index('key').getKey(booking.key);
    await change.store.put(position === undefined ? booking : { ...booking, position });
    await change.done;
  },
  remove: async (key) => {
    const change = (await tablet()).transaction('bookings', 'readwrite');
    const position = await change.store.index('key').getKey(key);
    if (position !== undefined) await change.store.delete(position);
    await change.done;
  },
};
