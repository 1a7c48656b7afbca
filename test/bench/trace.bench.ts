import { PLANNER_OPTIONS } from '@api/platform/database/prisma';
import { type Direction, SUBGRAPH_DETAILS, subgraphQuery } from '@api/modules/tracing';
import { Client } from 'pg';
import { Hand } from '../support/histories/http';
import { startTestService, type TestService } from '../support/service/test-service';
import { alone } from './alone';
import { generateShop } from './generate-shop';
import { keep, reportGrowth } from './growth';
import { serve, type Served } from './served';
import { median } from './stopwatch';

/** A fifth as many lots as draws. */
const DRAWS = (process.env['BENCH_DRAWS'] ?? '100000,1000000,3000000').split(',').map(Number);
const RUNS = Number(process.env['BENCH_RUNS'] ?? 15);

/** Parts of all lots by layer: received, fillings, pieces, boxes. */
const LAYERS = [0.2, 0.15, 0.25, 0.4] as const;

const PROBES: readonly (readonly [what: string, layer: number, direction: Direction])[] = [
  ['ahead of a received lot', 0, 'forward'],
  ['back from a box', 3, 'back'],
  ['both ways from a piece', 2, 'both'],
];

/** Milliseconds of each run, and the answer over HTTP. */
interface Asked {
  readonly straight: readonly number[];
  readonly served: readonly number[];
  readonly text: string;
}

interface Answered {
  readonly path: string;
  readonly rows: (text: string) => number;
}

const lotsInTrace = (text: string): number => (JSON.parse(text) as { lots: unknown[] }).lots.length;
const linesIn = (text: string): number => text.trim().split('\r\n').length - 1;

describe.each(DRAWS)('a shop of %i draws', (draws) => {
  let service: TestService;
  let served: Served | undefined;
  let auditor: Hand;
  let pg: Client;

  /** Code of a lot somewhat past the middle of its layer. */
  const codeIn = (layer: number): string =>
    `X${String(layer)}-${String(Math.round((draws / 5) * (LAYERS[layer] ?? 0) * 0.6))}`;

  /** The answer over HTTP against the graph's query alone, turn by turn, so that both meet the same machine. */
  const compare = async (
    question: string,
    code: string,
    direction: Direction,
    answer: Answered,
  ): Promise<void> => {
    const found = await pg.query<{ id: string }>('SELECT id FROM lot WHERE code = $1', [code]);
    const query = subgraphQuery([found.rows[0]?.id ?? ''], direction, SUBGRAPH_DETAILS);
    const {
      straight,
      served: overHttp,
      text,
    } = alone('questions', {
      databaseUrl: service.databaseUrl,
      options: PLANNER_OPTIONS,
      query: { text: query.text, values: query.values },
      url: `${served?.origin ?? ''}/api${answer.path}`,
      token: auditor.token,
      runs: RUNS,
    }) as Asked;
    const rows = answer.rows(text);
    keep({ question, draws, rows, straight: median(straight), served: median(overHttp) });
    expect(rows).toBeGreaterThan(1);
  };

  beforeAll(async () => {
    service = await startTestService();
    await generateShop(service.databaseUrl, { lots: draws / 5, draws });
    served = await serve(service.databaseUrl);
    auditor = await Hand.of(served.origin, 'The auditor');
    pg = new Client({ connectionString: service.databaseUrl, options: PLANNER_OPTIONS });
    await pg.connect();
  }, 3_600_000);

  afterAll(async () => {
    await pg.end();
    await served?.stop();
    await service.close();
  });

  it.each(PROBES)(
    'traces %s',
    async (what, layer, direction) => {
      const code = codeIn(layer);
      const path = `/lots/${code}/trace?direction=${direction}`;
      await compare(`trace ${what}`, code, direction, { path, rows: lotsInTrace });
    },
    600_000,
  );

  it('balances a received lot', async () => {
    const code = codeIn(0);
    const rows = (text: string): number =>
      (JSON.parse(text) as { ends: unknown[] }).ends.length + 1;
    await compare('balance', code, 'forward', { path: `/lots/${code}/balance`, rows });
  }, 600_000);

  it('lists the recall of a received lot', async () => {
    const code = codeIn(0);
    const opened = await service.as.maker
      .post('/recalls', { mode: 'rehearsal', reason: 'x', starts: [{ kind: 'lot', text: code }] })
      .expect(201);
    const path = `/recalls/${(opened.body as { code: string }).code}/list.csv`;
    await compare('recall list', code, 'forward', { path, rows: linesIn });
  }, 600_000);
});

afterAll(reportGrowth);
