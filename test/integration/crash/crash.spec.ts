import { join } from 'node:path';
import { runningDatabaseUrl } from '@api/platform/embedded-database';
import { verifyDatabase } from '@api/platform/verify';
import { ask } from '../../support/database/ask';
import { type DataFolder, makeDataFolder } from '../../support/database/data-folder';
import { freePort, ServiceProcess, until } from '../../support/service/service-process';
import { StubbornClient } from '../../support/service/stubborn-client';
import { signUp, type TestService } from '../../support/service/test-service';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';

jest.setTimeout(240_000);

const LINES = 3;

let folder: DataFolder;
let service: ServiceProcess;
let client: StubbornClient;
let kitchen: Kitchen;
/** A pair of lots for each maker, so that they are seldom in each other's way. */
let lots: readonly { readonly cream: string; readonly couverture: string }[];

const databaseUrl = (): string => {
  const url = runningDatabaseUrl({ dataFolder: service.dataFolder });
  if (url === undefined) throw new Error('the service is not running');
  return url;
};

const larder = async () => ({
  cream: await kitchen.receive(kitchen.cream, '9000000'),
  couverture: await kitchen.receive(kitchen.couverture, '9000000'),
});

beforeAll(async () => {
  folder = makeDataFolder();
  service = new ServiceProcess(join(folder.path, 'data'), await freePort());
  await service.start();
  const { as, token } = await signUp(service.origin, service.ownerToken);
  client = new StubbornClient(service.origin, token);
  // The kitchen asks no more of a service than its people and its database.
  kitchen = await openKitchen({ as, databaseUrl: databaseUrl() } as TestService);
  lots = [await larder(), await larder()];
});
afterAll(async () => {
  await service.stop();
  folder.remove();
});

/** A delivery of three lines: three lots, or none. */
const takeIn = (): Promise<unknown> =>
  client.book('/deliveries', {
    supplierId: kitchen.supplierId,
    lines: Array.from({ length: LINES }, (_, line) => ({
      itemId: kitchen.couverture,
      supplierLotCode: `S-${String(line)}`,
      quantity: '1000',
      price: '10.00',
    })),
  });

/** A whole batch: opened, drawn into twice, finished with everything that went in. */
const cook = async (maker: number): Promise<void> => {
  const batch = await client.book('/batches', { itemId: kitchen.ganache });
  const path = `/batches/${String(batch['id'])}`;
  await client.book(`${path}/draws`, { lotCode: lots[maker]?.cream, quantity: '400' });
  await client.book(`${path}/draws`, { lotCode: lots[maker]?.couverture, quantity: '600' });
  await client.book(`${path}/finish`, { outputs: [{ quantity: '1000' }] });
};

const state: { stopped: boolean; failed: unknown } = { stopped: false, failed: undefined };

/** Keeps four pairs of hands booking until told to stop; every booking begun is seen through. */
const keepBooking = (): { stop: () => Promise<void> } => {
  state.stopped = false;
  const loop = async (work: () => Promise<unknown>): Promise<void> => {
    try {
      while (!state.stopped) await work();
    } catch (error) {
      state.failed = error;
    }
  };
  const hands = Promise.all([loop(takeIn), loop(takeIn), loop(() => cook(0)), loop(() => cook(1))]);
  return {
    stop: async () => {
      state.stopped = true;
      await hands;
      expect(state.failed).toBeUndefined();
    },
  };
};

const booked = (pattern: RegExp): Readonly<Record<string, unknown>>[] =>
  client.acknowledged.filter(({ path }) => pattern.test(path)).map(({ body }) => body);

const moreBookings = async (count: number): Promise<void> => {
  const goal = client.acknowledged.length + count;
  await until(`${String(count)} more bookings are taken`, () => {
    if (state.failed !== undefined) throw state.failed as Error;
    return client.acknowledged.length >= goal;
  });
};

const codesOf = (bodies: readonly Readonly<Record<string, unknown>>[], list: string): string[] =>
  bodies.flatMap((body) => (body[list] as { lotCode: string }[]).map(({ lotCode }) => lotCode));

const expectNothingLost = async (): Promise<void> => {
  const url = databaseUrl();
  const deliveries = booked(/^\/deliveries$/);
  const finished = booked(/\/finish$/);
  const [counts] = await ask(
    url,
    `SELECT (SELECT count(*)::int FROM delivery) - 4 AS deliveries,
            (SELECT count(*)::int FROM delivery_line) - 4 AS lines,
            (SELECT count(*)::int FROM movement WHERE kind = 'received') - 4 AS received,
            (SELECT count(*)::int FROM batch) AS batches,
            (SELECT count(*)::int FROM batch WHERE state = 'finished') AS finished,
            (SELECT count(*)::int FROM draw) AS draws`,
  );
  // Each once: not lost, and not twice although it was sent again. Four deliveries opened the shop.
  expect(counts).toMatchObject({
    deliveries: deliveries.length,
    lines: deliveries.length * LINES,
    received: deliveries.length * LINES,
    batches: booked(/^\/batches$/).length,
    finished: finished.length,
    draws: booked(/\/draws$/).length,
  });
  const lots = await ask<{ code: string }>(url, 'SELECT code FROM lot');
  const known = new Set(lots.map(({ code }) => code));
  const told = [...codesOf(deliveries, 'lines'), ...codesOf(finished, 'outputs')];
  expect(told.filter((code) => !known.has(code))).toEqual([]);
  expect(new Set(told).size).toBe(told.length);
  expect(await verifyDatabase(url)).toEqual([]);
};

describe('in the middle of a stream of bookings', () => {
  it.each<[string, () => Promise<void>]>([
    [
      'kill -9 of the service',
      async () => {
        await service.kill();
        await service.start();
      },
    ],
    [
      'kill -9 of the database',
      () => {
        service.killDatabase();
        return Promise.resolve();
      },
    ],
    [
      'an orderly stop',
      async () => {
        expect(await service.stop()).toBe(0);
        await service.start();
      },
    ],
    [
      'kill -9 of both at once',
      async () => {
        service.killDatabase();
        await service.kill();
        await service.start();
      },
    ],
  ])(
    '%s loses nothing that was acknowledged, and leaves nothing half done',
    async (_what, crash) => {
      const { repeats } = client;
      const booking = keepBooking();
      await moreBookings(12);
      await crash();
      await moreBookings(12);
      await booking.stop();
      expect(client.repeats).toBeGreaterThan(repeats);
      expect(client.faults).toEqual([]);
      await expectNothingLost();
    },
  );
});
