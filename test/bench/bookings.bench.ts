import { PLANNER_OPTIONS } from '@api/platform/database/prisma';
import { Client } from 'pg';
import { Hand } from '../support/histories/http';
import { addShopItems } from '../support/histories/shop-items';
import { startTestService, type TestService } from '../support/service/test-service';
import { receive } from '../support/workshop/fixtures';
import { alone } from './alone';
import { generateShop } from './generate-shop';
import { serve, type Served } from './served';
import { report } from './stopwatch';

const CLIENTS = 8;
const SECONDS = Number(process.env['BENCH_SECONDS'] ?? 8);

interface Statement {
  readonly name?: string;
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

/** Every statement that the service sends while one booking is made, in order. */
const recordStatements = async (work: () => Promise<unknown>): Promise<Statement[]> => {
  const statements: Statement[] = [];
  const query = Reflect.get(Client.prototype, 'query') as (...args: unknown[]) => unknown;
  Client.prototype.query = function record(this: Client, ...args: unknown[]) {
    const [config, values] = args;
    if (typeof config === 'string') {
      statements.push({ text: config, values: Array.isArray(values) ? values : [] });
    } else if (typeof config === 'object' && config !== null) {
      const { values: own, ...statement } = config as { text: string; values?: unknown[] };
      const { name, text } = statement as { name?: string; text: string };
      const kept = { text, values: own ?? (Array.isArray(values) ? values : []) };
      statements.push(name === undefined || name === '' ? kept : { name, ...kept });
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

interface Counted {
  readonly bare: number;
  readonly lost: number;
  readonly http: number;
  readonly busy: number;
}

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

  const bodyOf = ({ lotCode }: Place): object => ({ lotCode, quantity: '0.010' });

  /** The transaction of one draw, and the ids in it that were there before. */
  const record = async (place: Place): Promise<{ statements: Statement[]; known: string[] }> => {
    const path = `/batches/${place.batchId}/draws`;
    const statements = await recordStatements(async () => {
      const { status } = await place.recorded.post(path, bodyOf(place));
      expect(status).toBe(201);
    });
    const pg = new Client({ connectionString: service.databaseUrl });
    await pg.connect();
    const ids = await pg.query<{ id: string }>(
      `SELECT id FROM lot UNION SELECT id FROM batch UNION SELECT id FROM app_user
       UNION SELECT id FROM item UNION SELECT id FROM recipe_version`,
    );
    await pg.end();
    const sent = new Set(statements.flatMap(({ values }) => values));
    const known = ids.rows.map(({ id }) => id).filter((id) => sent.has(id));
    return { statements: transactionOf(statements), known };
  };

  it('draws with 8 clients, against the bare transaction of the same statements', async () => {
    const asked = [];
    for (const place of places) {
      asked.push({
        ...(await record(place)),
        url: `${served?.origin ?? ''}/api/batches/${place.batchId}/draws`,
        token: place.clocked.token,
        body: JSON.stringify(bodyOf(place)),
      });
    }
    const { bare, lost, http, busy } = alone('bookings', {
      databaseUrl: service.databaseUrl,
      options: PLANNER_OPTIONS,
      seconds: SECONDS,
      places: asked,
    }) as Counted;
    report(
      `bookings with ${String(CLIENTS)} clients: bare ${bare.toFixed(0)}/s ` +
        `(${String(asked[0]?.statements.length ?? 0)} statements, ${String(lost)} lost to ` +
        `conflicts and sent again), HTTP ${http.toFixed(0)}/s (${String(busy)} refused as busy), ` +
        `ratio ${(http / bare).toFixed(2)}`,
    );
    expect(http).toBeGreaterThan(0);
  }, 120_000);
});
