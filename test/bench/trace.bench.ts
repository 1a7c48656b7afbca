import { PLANNER_OPTIONS } from '@api/platform/database/prisma';
import { type Direction, SUBGRAPH_DETAILS, subgraphQuery } from '@api/modules/tracing';
import type { TraceView } from '@api/modules/tracing/trace.dto';
import { Client } from 'pg';
import { Hand } from '../support/histories/http';
import { startTestService, type TestService } from '../support/service/test-service';
import { generateShop } from './generate-shop';
import { clocked, median, report } from './stopwatch';

/** BENCH_DRAWS=100000,1000000,3000000 prints the growth; a fifth as many lots as draws. */
const DRAWS = (process.env['BENCH_DRAWS'] ?? '1000000').split(',').map(Number);
const RUNS = Number(process.env['BENCH_RUNS'] ?? 15);

const PROBES: readonly (readonly [what: string, layer: number, direction: Direction])[] = [
  ['ahead of a received lot', 0, 'forward'],
  ['back from a box', 3, 'back'],
  ['both ways from a piece', 2, 'both'],
];

describe.each(DRAWS)('a shop of %i draws', (draws) => {
  let service: TestService;
  let pg: Client;
  let hand: Hand;

  beforeAll(async () => {
    service = await startTestService();
    await generateShop(service.databaseUrl, { lots: draws / 5, draws });
    hand = await Hand.of(service, 'The auditor');
    pg = new Client({ connectionString: service.databaseUrl, options: PLANNER_OPTIONS });
    await pg.connect();
  }, 1_800_000);

  afterAll(async () => {
    await pg.end();
    await service.close();
  });

  it.each(PROBES)(
    'traces %s',
    async (what, layer, direction) => {
      const share = [0.2, 0.15, 0.25, 0.4][layer] ?? 0.2;
      const code = `X${String(layer)}-${String(Math.round((draws / 5) * share * 0.6))}`;
      const found = await pg.query<{ id: string }>('SELECT id FROM lot WHERE code = $1', [code]);
      const query = subgraphQuery([found.rows[0]?.id ?? ''], direction, SUBGRAPH_DETAILS);
      const straight: number[] = [];
      const served: number[] = [];
      let lots = 0;
      for (let run = -2; run < RUNS; run += 1) {
        const floor = await clocked(() => pg.query(query.text, query.values));
        const http = await clocked(async () => {
          const { body } = await hand.get(`/lots/${code}/trace?direction=${direction}`);
          lots = (body as TraceView).lots.length;
        });
        if (run < 0) continue;
        straight.push(floor);
        served.push(http);
      }
      const [floor, http] = [median(straight), median(served)];
      report(
        `trace ${what}, ${String(draws)} draws: ${String(lots)} lots; straight ${floor.toFixed(1)} ms, ` +
          `HTTP ${http.toFixed(1)} ms, ratio ${(http / floor).toFixed(2)}`,
      );
      expect(lots).toBeGreaterThan(1);
    },
    600_000,
  );

  it('balances a received lot and lists its recall', async () => {
    const code = `X0-${String(Math.round((draws / 5) * 0.2 * 0.6))}`;
    const balance = await clocked(() => hand.must(hand.get(`/lots/${code}/balance`)));
    const owner = await Hand.of(service, 'The owner');
    const body = { mode: 'rehearsal', reason: 'x', starts: [{ kind: 'lot', text: code }] };
    const recall = await clocked(() => owner.must(owner.post('/recalls', body)));
    report(
      `balance ${balance.toFixed(0)} ms, recall opened with its list ${recall.toFixed(0)} ms, ` +
        `${String(draws)} draws (one run each)`,
    );
  }, 600_000);
});
