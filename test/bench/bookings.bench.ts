import { PLANNER_OPTIONS } from '@api/platform/database/prisma';
import { randomUUID } from 'node:crypto';
import { Client, Pool } from 'pg';
import { Hand } from '../support/histories/http';
import { addShopItems } from '../support/histories/shop-items';
import { startTestService, type TestService } from '../support/service/test-service';
import { receive } from '../support/workshop/fixtures';
import { generateShop } from './generate-shop';
import { serve, type Served } from './served';
import { report } from './stopwatch';

const CLIENTS = 8;
const SECONDS = Number(process.env['BENCH_SECONDS'] ?? 8);

interface Statement {
  readonly text: string;
  readonly values: readonly unknown[];
}

interface Place {
  readonly batchId: string;
  readonly lotCode: string;
  /** Of whoever draws there, at the service that is recorded and at the one that is clocked. */
  readonly recorded: Hand;
  readonly clocked: Hand;
}

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/** Every statement that the service sends while one booking is made, in order. */
const recordStatements = async (work: () => Promise<unknown>): Promise<Statement[]> => {
  const statements: Statement[] = [];
  const query = Reflect.get(Client.prototype, 'query') as (...args: unknown[]) => unknown;
  Client.prototype.query = function record(this: Client, ...args: unknown[]) {
    const [config, values] = args;
    if (typeof config === 'string') {
      statements.push({ text: config, values: Array.isArray(values) ? values : [] });
    } else if (typeof config === 'object' && config !== null) {
      const { text, values: own } = config as { text: string; values?: unknown[] };
      statements.push({ text, values: own ?? (Array.isArray(values) ? values : []) });
    }
    return query.apply(this, args);
  } as typeof Client.prototype.query;
  try {
    await work();
  } finally {
    Reflect.set(Client.prototype, 'query', query);
  }
  return statements;
};

/** From the last BEGIN to the COMMIT: the transaction of the booking, without sign-in. */
const transactionOf = (statements: readonly Statement[]): Statement[] => {
  const begin = statements.findLastIndex(({ text }) => /^BEGIN/i.test(text));
  const commit = statements.findIndex(({ text }, index) => index > begin && /^COMMIT/i.test(text));
  return statements.slice(begin, commit + 1);
};

/** Runs for the agreed time with all clients at once; bookings per second. */
const perSecond = async (book: (client: number) => Promise<boolean>): Promise<number> => {
  const end = performance.now() + SECONDS * 1000;
  const begun = performance.now();
  const counts = await Promise.all(
    Array.from({ length: CLIENTS }, async (_, client) => {
      let count = 0;
      while (performance.now() < end) if (await book(client)) count += 1;
      return count;
    }),
  );
  return counts.reduce((sum, count) => sum + count, 0) / ((performance.now() - begun) / 1000);
};

describe('bookings', () => {
  let service: TestService;
  let served: Served | undefined;
  let places: Place[];

  beforeAll(async () => {
    service = await startTestService();
    // On a shop that has been at work: on empty tables the planner reads whole tables, and under
    // serializable isolation whoever reads a whole table is in everybody's way.
    await generateShop(service.databaseUrl, { lots: 20_000, draws: 100_000 });
    served = await serve(service.databaseUrl);
    const items = await addShopItems(service);
    places = [];
    for (let client = 0; client < CLIENTS; client += 1) {
      const { lotCode } = await receive(service, items.supplierId, {
        itemId: items.cream,
        quantity: '9000000',
      });
      const opened = await service.as.maker.post('/batches', { itemId: items.ganache });
      const { id } = opened.body as { id: string };
      places.push({
        batchId: id,
        lotCode,
        recorded: await Hand.of(service.origin, 'The maker'),
        clocked: await Hand.of(served.origin, 'The maker'),
      });
    }
  }, 600_000);

  afterAll(async () => {
    await served?.stop();
    await service.close();
  });

  const draw = async (hand: Hand, { batchId, lotCode }: Place): Promise<boolean> => {
    const body = { lotCode, quantity: '0.010' };
    const { status } = await hand.post(`/batches/${batchId}/draws`, body);
    expect([201, 409]).toContain(status);
    return status === 201;
  };

  /** Ids and keys that a statement brings into the world are made anew each time it is sent. */
  const sendAgain = async (
    pool: Pool,
    statements: readonly Statement[],
    known: ReadonlySet<string>,
  ) => {
    const fresh = new Map<string, string>();
    const renew = (value: unknown): unknown => {
      if (typeof value !== 'string' || !UUID.test(value) || known.has(value)) return value;
      const id = fresh.get(value) ?? randomUUID();
      fresh.set(value, id);
      return id;
    };
    const client = await pool.connect();
    try {
      for (const { text, values } of statements) await client.query(text, values.map(renew));
      return true;
    } catch {
      await client.query('ROLLBACK');
      return false;
    } finally {
      client.release();
    }
  };

  it('draws with 8 clients, against the bare transaction of the same statements', async () => {
    const recorded: { statements: Statement[]; known: Set<string> }[] = [];
    for (const place of places) {
      const statements = transactionOf(await recordStatements(() => draw(place.recorded, place)));
      const pg = new Client({ connectionString: service.databaseUrl });
      await pg.connect();
      const ids = await pg.query<{ id: string }>(
        `SELECT id FROM lot UNION SELECT id FROM batch UNION SELECT id FROM app_user
         UNION SELECT id FROM item UNION SELECT id FROM recipe_version`,
      );
      await pg.end();
      recorded.push({ statements, known: new Set(ids.rows.map((row) => row.id)) });
    }
    const pool = new Pool({
      connectionString: service.databaseUrl,
      max: CLIENTS,
      options: PLANNER_OPTIONS,
    });
    pool.on('error', () => undefined);
    let lost = 0;
    let busy = 0;
    const floor = await perSecond(async (client) => {
      const one = recorded[client];
      if (one === undefined || (await sendAgain(pool, one.statements, one.known))) return true;
      lost += 1;
      return false;
    });
    await pool.end();
    const overHttp = await perSecond(async (client) => {
      const place = places[client];
      if (place === undefined || (await draw(place.clocked, place))) return true;
      busy += 1;
      return false;
    });
    report(
      `bookings with ${String(CLIENTS)} clients: bare ${floor.toFixed(0)}/s ` +
        `(${String(recorded[0]?.statements.length ?? 0)} statements, ${String(lost)} lost to ` +
        `conflicts and sent again), HTTP ${overHttp.toFixed(0)}/s (${String(busy)} refused as busy), ` +
        `ratio ${(overHttp / floor).toFixed(2)}`,
    );
    expect(overHttp).toBeGreaterThan(0);
  }, 120_000);
});
