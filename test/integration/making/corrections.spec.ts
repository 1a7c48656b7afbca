import { startTestService, type TestService } from '../../support/service/test-service';
import { BenchHands, type BatchBody } from '../../support/workshop/bench';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';

let service: TestService;
let kitchen: Kitchen;
let bench: BenchHands;
let creamA: string;
let creamB: string;
let couverture: string;

beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
  kitchen = await openKitchen(service);
  bench = new BenchHands(service);
  creamA = await kitchen.receive(kitchen.cream, '5000', { useBy: '2026-12-20' });
  creamB = await kitchen.receive(kitchen.cream, '5000', { useBy: '2026-12-10' });
  couverture = await kitchen.receive(kitchen.couverture, '50000', { bestBefore: '2027-11-01' });
});
afterAll(() => service.close());

const draws = (cream: string) =>
  [
    { lotCode: cream, quantity: '400' },
    { lotCode: couverture, quantity: '600' },
  ] as const;

const cooked = (): Promise<BatchBody> =>
  bench.make(kitchen.ganache, draws(creamA), { outputs: [{ quantity: '1000' }] });

describe('a correction of a finished batch', () => {
  it('takes a draw back, books the lot that was really used, and brings dates forward', async () => {
    const batch = await cooked();
    const made = batch.outputs[0]?.lotCode ?? '';
    const pieces = await bench.make(
      kitchen.piece,
      [
        { lotCode: couverture, quantity: '144' },
        { lotCode: made, quantity: '120' },
      ],
      { outputs: [{ quantity: '24' }] },
    );
    expect(pieces.outputs[0]?.bestBefore).toBe('2026-12-20');
    const before = await bench.lot(creamA);
    const corrected = await service.as.maker
      .post(`/batches/${batch.id}/corrections`, {
        reason: 'the other carton was open',
        reversedDrawIds: [batch.draws[0]?.id],
        draws: [{ lotCode: creamB, quantity: '400' }],
      })
      .expect(201);
    expect(corrected.body).toMatchObject({
      balance: { differenceGrams: '0.000' },
      outputs: [{ lotCode: made, bestBefore: '2026-12-10' }],
    });
    const after = await bench.lot(creamA);
    expect(Number(after['onHandQuantity'])).toBe(Number(before['onHandQuantity']) + 400);
    expect(await bench.lot(pieces.outputs[0]?.lotCode ?? '')).toMatchObject({
      bestBefore: '2026-12-10',
    });
    const again = await service.as.maker.post(`/batches/${batch.id}/corrections`, {
      reason: 'twice',
      reversedDrawIds: [batch.draws[0]?.id],
    });
    expect(again.body).toMatchObject({ type: '/problems/already-reversed', status: 409 });
  });

  it('is refused, whole, when weights no longer balance', async () => {
    const batch = await cooked();
    const before = await bench.lot(creamB);
    const answer = await service.as.maker.post(`/batches/${batch.id}/corrections`, {
      reason: 'weighed again',
      reversedDrawIds: [batch.draws[0]?.id],
      draws: [{ lotCode: creamB, quantity: '410' }],
    });
    expect(answer.body).toMatchObject({
      type: '/problems/batch-does-not-balance',
      facts: { differenceGrams: '10' },
    });
    expect(await bench.lot(creamB)).toEqual(before);
    await service.as.maker
      .post(`/batches/${batch.id}/corrections`, {
        reason: 'weighed again',
        reversedDrawIds: [batch.draws[0]?.id],
        draws: [{ lotCode: creamB, quantity: '410' }],
        losses: [{ kind: 'steam', massGrams: '10' }],
      })
      .expect(201);
  });

  it('is refused when a lot would become its own ancestor', async () => {
    const first = await cooked();
    const made = first.outputs[0]?.lotCode ?? '';
    const second = await bench.make(
      kitchen.ganache,
      [{ lotCode: made, quantity: '500', role: 'rework' }, ...draws(creamA)],
      { outputs: [{ quantity: '1500' }] },
    );
    const answer = await service.as.maker.post(`/batches/${first.id}/corrections`, {
      reason: 'rework went in here',
      reversedDrawIds: [first.draws[0]?.id],
      draws: [{ lotCode: second.outputs[0]?.lotCode, quantity: '400', role: 'rework' }],
    });
    expect(answer.status).toBe(409);
    expect(answer.body).toMatchObject({ type: '/problems/circle' });
  });

  it('is not for an open batch, nor for a seller', async () => {
    const batch = await bench.open(kitchen.ganache);
    const body = { reason: 'why' };
    const open = await service.as.maker.post(`/batches/${batch.id}/corrections`, body);
    expect(open.body).toMatchObject({ type: '/problems/batch-not-finished' });
    await service.as.seller.post(`/batches/${batch.id}/corrections`, body).expect(403);
  });
});

describe('an open batch', () => {
  it('gives a draw back to its lot', async () => {
    const batch = await bench.open(kitchen.ganache);
    const before = await bench.lot(creamA);
    const drawn = await bench.draw(batch, { lotCode: creamA, quantity: '123.456' }).expect(201);
    const { id } = drawn.body as { id: string };
    const path = `/batches/${batch.id}/draws/${id}/reversal`;
    await service.as.maker.post(path, { reason: 'wrong carton' }).expect(201);
    expect(await bench.lot(creamA)).toMatchObject({ onHandQuantity: before['onHandQuantity'] });
    const twice = await service.as.maker.post(path, { reason: 'wrong carton' });
    expect(twice.body).toMatchObject({ type: '/problems/already-reversed' });
  });

  it('asks for a role when an item is not in the recipe', async () => {
    const batch = await bench.open(kitchen.ganache);
    const carton = await kitchen.receive(kitchen.carton, '10');
    const refused = await bench.draw(batch, { lotCode: carton, quantity: '1' });
    expect(refused.status).toBe(422);
    expect(refused.body).toMatchObject({ type: '/problems/not-in-recipe' });
  });

  it('is abandoned: what is named goes back, the rest is thrown away, and it balances', async () => {
    const batch = await bench.open(kitchen.ganache);
    const cream = await bench.draw(batch, { lotCode: creamA, quantity: '400' }).expect(201);
    const dark = await bench.draw(batch, { lotCode: couverture, quantity: '600' }).expect(201);
    await service.as.maker
      .post(`/batches/${batch.id}/losses`, { kind: 'steam', massGrams: '30' })
      .expect(201);
    const all = await service.as.maker.post(`/batches/${batch.id}/abandon`, {
      reason: 'boiled over',
      returnedDrawIds: [(cream.body as { id: string }).id, (dark.body as { id: string }).id],
    });
    expect(all.body).toMatchObject({ type: '/problems/more-out-than-in', status: 422 });
    const ended = await service.as.maker
      .post(`/batches/${batch.id}/abandon`, {
        reason: 'boiled over',
        returnedDrawIds: [(dark.body as { id: string }).id],
      })
      .expect(200);
    expect(ended.body).toMatchObject({
      state: 'abandoned',
      endReason: 'boiled over',
      balance: { drawnGrams: '400.000', lostGrams: '400.000', differenceGrams: '0.000' },
    });
    const late = await bench.draw(batch, { lotCode: creamA, quantity: '1' });
    expect(late.body).toMatchObject({ type: '/problems/batch-not-open' });
  });

  it('takes more out than in only for a reason, which is kept', async () => {
    const batch = await bench.open(kitchen.ganache);
    for (const body of draws(creamA)) await bench.draw(batch, body).expect(201);
    const finish = { outputs: [{ quantity: '1002' }] };
    const refused = await bench.finish(batch, finish);
    expect(refused.body).toMatchObject({ type: '/problems/more-out-than-in' });
    const imbalanceReason = 'the large scale reads in steps of 5 g';
    const done = await bench.finish(batch, { ...finish, imbalanceReason }).expect(200);
    expect(done.body).toMatchObject({ imbalanceReason, balance: { differenceGrams: '-2.000' } });
  });
});

describe('a reading outside its limits', () => {
  const read = (batch: BatchBody, value: string) =>
    service.as.maker.post(`/batches/${batch.id}/readings`, {
      measure: 'temp_c',
      step: 'Boil',
      value,
    });

  it('puts what is made on hold, naming value and limit, until a person decides', async () => {
    const batch = await bench.open(kitchen.ganache);
    for (const body of draws(creamA)) await bench.draw(batch, body).expect(201);
    expect((await read(batch, '71').expect(201)).body).toMatchObject({ verdict: 'low' });
    const done = await bench.finish(batch, { outputs: [{ quantity: '1000' }] }).expect(200);
    const made = (done.body as BatchBody).outputs[0]?.lotCode ?? '';
    const cast = await bench.open(kitchen.piece);
    const refused = await bench.draw(cast, { lotCode: made, quantity: '10' });
    expect(refused.body).toMatchObject({ type: '/problems/lot-held', facts: { lotCode: made } });
    expect((refused.body as { detail: string }).detail).toContain('was 71, 82 at least');
    const held = await bench.lot(made);
    const [hold] = held['holds'] as { id: string }[];
    await service.as.owner
      .post(`/lots/${made}/holds/${hold?.id ?? ''}/release`, { reason: 'boiled again, 85 °C' })
      .expect(201);
    await bench.draw(cast, { lotCode: made, quantity: '10' }).expect(201);
  });

  it('holds nothing once a later reading of the same check is within the limits', async () => {
    const batch = await bench.open(kitchen.ganache);
    for (const body of draws(creamA)) await bench.draw(batch, body).expect(201);
    await read(batch, '71').expect(201);
    await read(batch, '84').expect(201);
    const done = await bench.finish(batch, { outputs: [{ quantity: '1000' }] }).expect(200);
    expect((done.body as BatchBody).outputs).toMatchObject([{ held: false }]);
  });

  it('holds the lots that a finished batch made already', async () => {
    const batch = await cooked();
    await read(batch, '99').expect(201);
    expect(await bench.lot(batch.outputs[0]?.lotCode ?? '')).toMatchObject({ onHold: true });
  });
});
