import { startTestService, type TestService } from '../../support/service/test-service';
import { BenchHands, type BatchBody } from '../../support/workshop/bench';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';
import { StraightAt } from '../../support/workshop/straight-at';

// What was written is never updated or deleted. A mistake is put right by an opposite entry.
let service: TestService;
let kitchen: Kitchen;
let database: StraightAt;
let batch: BatchBody;

beforeAll(async () => {
  service = await startTestService();
  kitchen = await openKitchen(service);
  database = await StraightAt.open(service.databaseUrl);
  const bench = new BenchHands(service);
  const cream = await kitchen.receive(kitchen.cream, '1000');
  const tank = await service.as.maker
    .post('/tanks', { name: 'Wheel', itemId: kitchen.couverture, capacityGrams: '5000' })
    .expect(201);
  const tankPath = `/tanks/${(tank.body as { id: string }).id}`;
  await service.as.maker
    .post(`${tankPath}/emptyings`, { outcome: 'wasted', cleaned: true })
    .expect(201);
  const trays = await service.as.maker.post('/moulds', { designId: kitchen.designId, count: 1 });
  const [tray] = (trays.body as { items: { tag: string }[] }).items;
  const cast = await bench.open(kitchen.piece);
  const use = { mouldTag: tray?.tag, cavitiesFilled: 24 };
  await service.as.maker.post(`/batches/${cast.id}/mould-uses`, use).expect(201);
  const open = await bench.open(kitchen.ganache);
  await bench.draw(open, { lotCode: cream, quantity: '500' }).expect(201);
  const reading = { measure: 'temp_c', value: '85' };
  await service.as.maker.post(`/batches/${open.id}/readings`, reading).expect(201);
  const loss = { kind: 'steam', massGrams: '10' };
  await service.as.maker.post(`/batches/${open.id}/losses`, loss).expect(201);
  batch = (await bench.finish(open, { outputs: [{ quantity: '490' }] }).expect(200))
    .body as BatchBody;
});
afterAll(async () => {
  await database.close();
  await service.close();
});

const KEPT = [
  'movement',
  'draw',
  'batch_loss',
  'mould_use',
  'mould_inspection',
  'tank_emptying',
  'reading',
  'journal_entry',
  'delivery',
  'delivery_line',
  'idempotent_request',
];

describe('straight at the database', () => {
  it.each(KEPT)('a row of %s is neither changed nor deleted nor truncated', async (table) => {
    const { count } = await database.row<{ count: string }>(`SELECT count(*) FROM ${table}`);
    expect(Number(count)).toBeGreaterThan(0);
    const { column } = await database.row<{ column: string }>(
      `SELECT column_name AS column FROM information_schema.columns
       WHERE table_name = $1 AND table_schema = 'public' ORDER BY ordinal_position LIMIT 1`,
      [table],
    );
    expect(await database.refusal(`UPDATE ${table} SET ${column} = ${column}`)).toBe('BL001');
    expect(await database.refusal(`DELETE FROM ${table}`)).toBe('BL001');
    expect(await database.refusal(`TRUNCATE ${table} CASCADE`)).toBe('BL001');
  });

  it.each(['label_run', 'dispatch', 'dispatch_line', 'recall_action', 'cleaning_record'])(
    'the empty table %s is guarded as well',
    async (table) => {
      expect(await database.refusal(`TRUNCATE ${table} CASCADE`)).toBe('BL001');
      const { guards } = await database.row<{ guards: string }>(
        `SELECT count(*) AS guards FROM pg_trigger
         WHERE tgrelid = $1::regclass AND tgname = 'append_only' AND tgenabled = 'O'`,
        [table],
      );
      expect(guards).toBe('1');
    },
  );

  it.each(['lot', 'batch', 'mould'])('a row of %s is never deleted', async (table) => {
    expect(await database.refusal(`DELETE FROM ${table}`)).toBe('BL001');
  });

  it('what a lot is made of, and what it cost, is fixed', async () => {
    expect(await database.refusal('UPDATE lot SET made_cost = made_cost + 1')).toBe('BL003');
    expect(await database.refusal("UPDATE lot SET code = code || 'X'")).toBe('BL003');
    expect(await database.refusal('UPDATE lot SET best_before = best_before + 1')).toBe('BL003');
  });

  it('a closed batch never opens again', async () => {
    const reopen = `UPDATE batch SET state = 'open', ended_at = NULL WHERE code = '${batch.code}'`;
    expect(await database.refusal(reopen)).toBe('BL007');
  });
});

describe('over HTTP', () => {
  it('there is no way to change or delete a draw, a reading or a movement', async () => {
    const draw = `/batches/${batch.id}/draws/${batch.draws[0]?.id ?? ''}`;
    await service.as.owner.patch(draw, 1, { quantity: '1' }).expect(404);
    await service.as.owner.delete(draw).expect(404);
    await service.as.owner.delete(`/batches/${batch.id}`).expect(404);
    await service.as.owner.delete(`/lots/${batch.outputs[0]?.lotCode ?? ''}`).expect(404);
  });
});
