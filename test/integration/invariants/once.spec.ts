import { randomUUID } from 'node:crypto';
import { startTestService, type TestService } from '../../support/service/test-service';
import { BenchHands } from '../../support/workshop/bench';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';
import { StraightAt } from '../../support/workshop/straight-at';

// A request that is sent twice under one Idempotency-Key happens once; what was acknowledged stays.
let service: TestService;
let kitchen: Kitchen;
let bench: BenchHands;
let database: StraightAt;

beforeAll(async () => {
  service = await startTestService();
  kitchen = await openKitchen(service);
  bench = new BenchHands(service);
  database = await StraightAt.open(service.databaseUrl);
});
afterAll(async () => {
  await database.close();
  await service.close();
});

const left = async (code: string): Promise<unknown> => (await bench.lot(code))['onHandQuantity'];

describe('one key', () => {
  it('draws once, however many copies arrive at the same time', async () => {
    const lotCode = await kitchen.receive(kitchen.cream, '1000');
    const batch = await bench.open(kitchen.ganache);
    const key = randomUUID();
    const body = { lotCode, quantity: '100' };
    const answers = await Promise.all(
      Array.from({ length: 8 }, () => bench.draw(batch, body, key)),
    );
    expect(answers.map(({ status }) => status)).toEqual(Array<number>(8).fill(201));
    const ids = new Set(answers.map(({ body: answer }) => (answer as { id: string }).id));
    expect(ids.size).toBe(1);
    expect(await left(lotCode)).toBe('900.000');
    const late = await bench.draw(batch, body, key).expect(201);
    expect(late.body).toEqual(answers[0]?.body);
    expect(await left(lotCode)).toBe('900.000');
  });

  it('is for one request: another body, path or person is refused', async () => {
    const lotCode = await kitchen.receive(kitchen.cream, '1000');
    const batch = await bench.open(kitchen.ganache);
    const key = randomUUID();
    await bench.draw(batch, { lotCode, quantity: '100' }, key).expect(201);
    const others = [
      await bench.draw(batch, { lotCode, quantity: '101' }, key),
      await bench.draw(await bench.open(kitchen.ganache), { lotCode, quantity: '100' }, key),
      await service.as.owner.post(`/batches/${batch.id}/draws`, { lotCode, quantity: '100' }, key),
    ];
    for (const { status, body } of others) {
      expect([status, (body as { type: string }).type]).toEqual([
        422,
        '/problems/idempotency-key-reused',
      ]);
    }
    expect(await left(lotCode)).toBe('900.000');
  });

  it('is free again after a refusal: nothing was booked under it', async () => {
    const lotCode = await kitchen.receive(kitchen.cream, '100');
    const batch = await bench.open(kitchen.ganache);
    const key = randomUUID();
    const body = { lotCode, quantity: '150' };
    expect((await bench.draw(batch, body, key)).status).toBe(409);
    const more = { kind: 'counted', quantity: '200', reason: 'a carton stood behind it' };
    await service.as.maker.post(`/lots/${lotCode}/adjustments`, more).expect(201);
    await bench.draw(batch, body, key).expect(201);
    expect(await left(lotCode)).toBe('50.000');
  });

  it('finishes a batch once, and makes its lots once', async () => {
    const lotCode = await kitchen.receive(kitchen.cream, '300');
    const batch = await bench.open(kitchen.ganache);
    await bench.draw(batch, { lotCode, quantity: '300' }).expect(201);
    const body = { outputs: [{ quantity: '300' }] };
    const key = randomUUID();
    const finish = (under: string) =>
      service.as.maker.post(`/batches/${batch.id}/finish`, body, under);
    const answers = await Promise.all([
      finish(key),
      finish(key),
      finish(randomUUID()),
      finish(key),
    ]);
    const { made } = await database.row<{ made: string }>(
      `SELECT count(*) AS made FROM lot WHERE batch_id = '${batch.id}'`,
    );
    expect(made).toBe('1');
    expect(answers.filter(({ status }) => status === 200).length).toBeGreaterThan(0);
    for (const { status } of answers) expect([200, 409]).toContain(status);
  });
});

describe('a stream of bookings whose connections are cut', () => {
  it('keeps each that was acknowledged, whole, and repeats the others safely', async () => {
    const lotCode = await kitchen.receive(kitchen.couverture, '100000');
    const batch = await bench.open(kitchen.ganache);
    const keys = Array.from({ length: 60 }, () => randomUUID());
    const cut = setInterval(() => {
      void database.rows(
        `SELECT pg_terminate_backend(pid) FROM pg_stat_activity
         WHERE pid <> pg_backend_pid() AND datname = current_database()`,
      );
    }, 40);
    const acknowledged: string[] = [];
    const send = async (key: string): Promise<number> => {
      const { status } = await bench.draw(batch, { lotCode, quantity: '10' }, key);
      if (status === 201) acknowledged.push(key);
      return status;
    };
    for (let start = 0; start < keys.length; start += 6) {
      await Promise.all(keys.slice(start, start + 6).map(send));
    }
    clearInterval(cut);
    const kept = await database.rows<{ key: string }>(
      'SELECT key FROM idempotent_request WHERE key = ANY($1)',
      [keys],
    );
    const stored = new Set(kept.map(({ key }) => key));
    for (const key of acknowledged) expect(stored.has(key)).toBe(true);
    for (const key of keys) expect(await send(key)).toBe(201);
    const { draws } = await database.row<{ draws: string }>(
      `SELECT count(*) AS draws FROM draw WHERE batch_id = '${batch.id}'`,
    );
    expect(draws).toBe('60');
    expect(await left(lotCode)).toBe('99400.000');
  });
});
