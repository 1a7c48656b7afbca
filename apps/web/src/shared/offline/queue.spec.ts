import { sendWaiting, tryAgain, type Booking, type BookingStore, type Sent } from './queue';

const memory = (bookings: readonly Booking[]): BookingStore & { keys: () => Promise<string[]> } => {
  const kept = new Map(bookings.map((booking) => [booking.key, booking]));
  return {
    all: () => Promise.resolve([...kept.values()]),
    put: (booking) => Promise.resolve(void kept.set(booking.key, booking)),
    remove: (key) => Promise.resolve(void kept.delete(key)),
    keys: () => Promise.resolve([...kept.keys()]),
  };
};

const booking = (key: string, lane: string, userId = 'ana'): Booking => ({
  key,
  lane,
  userId,
  path: '/api/batches/1/draws',
  body: { quantity: '1' },
  label: key,
  bookedAt: '2026-01-01T08:00:00Z',
});

const done: Sent = { kind: 'done', answer: null };
const refused: Sent = {
  kind: 'refused',
  problem: { type: 'lot-held', title: 'Held', status: 409 },
};

const run = async (store: BookingStore, answers: Record<string, Sent>, userId = 'ana') => {
  const sent: string[] = [];
  await sendWaiting(
    store,
    (waiting) => {
      sent.push(waiting.key);
      return Promise.resolve(answers[waiting.key] ?? done);
    },
    userId,
    () => undefined,
  );
  return sent;
};

describe('bookings that wait on the tablet', () => {
  it('go in the order in which they were booked, and leave the queue', async () => {
    const store = memory([booking('a', 'x'), booking('b', 'y'), booking('c', 'x')]);
    expect(await run(store, {})).toEqual(['a', 'b', 'c']);
    expect(await store.keys()).toEqual([]);
  });

  it('all stay when the service cannot be reached', async () => {
    const store = memory([booking('a', 'x'), booking('b', 'y')]);
    expect(await run(store, { a: { kind: 'unreachable' } })).toEqual(['a']);
    expect(await store.keys()).toEqual(['a', 'b']);
  });

  it('hold back the later ones of their lane when one is refused, and only those', async () => {
    const store = memory([booking('a', 'x'), booking('b', 'y'), booking('c', 'x')]);
    expect(await run(store, { a: refused })).toEqual(['a', 'b']);
    expect(await store.keys()).toEqual(['a', 'c']);
    expect((await store.all())[0]?.refused?.title).toBe('Held');
    expect(await run(store, {})).toEqual([]);
  });

  it('go again, in order, when the person says so', async () => {
    const store = memory([booking('a', 'x'), booking('c', 'x')]);
    await run(store, { a: refused });
    const [first] = await store.all();
    if (first !== undefined) await tryAgain(store, first);
    expect(await run(store, {})).toEqual(['a', 'c']);
  });

  it('are never sent under another person’s name', async () => {
    const store = memory([booking('a', 'x'), booking('b', 'y', 'ben')]);
    expect(await run(store, {}, 'ben')).toEqual(['b']);
    expect(await store.keys()).toEqual(['a']);
  });
});
