import { randomUUID } from 'node:crypto';
import { startTestService, type TestService } from '../../support/service/test-service';
import { BenchHands, type BatchBody } from '../../support/workshop/bench';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';
import { StraightAt } from '../../support/workshop/straight-at';

let service: TestService;
let kitchen: Kitchen;
let bench: BenchHands;
let database: StraightAt;
let cream: string;

beforeAll(async () => {
  service = await startTestService();
  kitchen = await openKitchen(service);
  bench = new BenchHands(service);
  database = await StraightAt.open(service.databaseUrl);
  cream = await kitchen.receive(kitchen.cream, '50000', { price: '100' });
});
afterAll(async () => {
  await database.close();
  await service.close();
});

const cooked = (from: string, quantity = '300'): Promise<BatchBody> =>
  bench.make(kitchen.ganache, [{ lotCode: from, quantity, role: 'base' }], {
    outputs: [{ quantity }],
  });

/** A draw straight into a batch, reason and all. */
const draw = (batchCode: string, lotCode: string, grams: string, reason: string | null = 'why') =>
  [
    `INSERT INTO draw (id, batch_id, lot_id, role, quantity, mass_g, cost, reason, user_id)
     SELECT $1, batch.id, lot.id, 'base', $4, $4, 0, $5, lot.user_id
     FROM batch, lot WHERE batch.code = $2 AND lot.code = $3`,
    [randomUUID(), batchCode, lotCode, grams, reason],
  ] as const;

const output = (batchCode: string, code: string, grams: string) =>
  [
    `INSERT INTO lot (id, code, item_id, unit, batch_id, output_role, made_quantity, made_mass_g,
       made_cost, made_on, user_id)
     SELECT $1, $2, $3, 'g', batch.id, 'product', $5, $5, 0, '2026-11-25', operator_id
     FROM batch WHERE code = $4`,
    [randomUUID(), code, kitchen.ganache, batchCode, grams],
  ] as const;

const close = (code: string): string =>
  `UPDATE batch SET state = 'finished', ended_at = now() WHERE code = '${code}'`;

// A finished batch balances, to the milligram.
describe('the balance, straight at the database', () => {
  it('is asked for when a batch closes, one milligram over or under', async () => {
    const { code } = await bench.open(kitchen.ganache);
    const drawn = draw(code, cream, '100', null);
    const end = (made: string) => database.refusal(drawn, output(code, 'X1', made), close(code));
    expect(await end('100')).toBeUndefined();
    expect(await end('99.999')).toBe('BL005');
    expect(await end('100.001')).toBe('BL005');
    expect(await database.refusal(drawn, close(code))).toBe('BL005');
  });

  it('is asked for again when a draw or a loss is added to a finished batch', async () => {
    const { code } = await cooked(cream);
    expect(await database.refusal(draw(code, cream, '0.001'))).toBe('BL005');
    const loss = `INSERT INTO batch_loss (id, batch_id, kind, mass_g, user_id)
      SELECT gen_random_uuid(), id, 'steam', 0.001, operator_id FROM batch WHERE code = '${code}'`;
    expect(await database.refusal(loss)).toBe('BL005');
    expect(await database.refusal(draw(code, cream, '0.001'), loss)).toBeUndefined();
    expect(await database.refusal(draw(code, cream, '0.001', null), loss)).toBe('BL007');
  });

  it('takes more out than in only with a reason, and never less', async () => {
    const { code } = await bench.open(kitchen.ganache);
    const drawn = draw(code, cream, '100', null);
    const excused = close(code).replace('SET', "SET imbalance_reason = 'the scale',");
    expect(await database.refusal(drawn, output(code, 'X1', '101'), excused)).toBeUndefined();
    expect(await database.refusal(drawn, output(code, 'X1', '99'), excused)).toBe('BL005');
  });

  it('lets no lot come out of a closed batch', async () => {
    const { code } = await cooked(cream);
    expect(await database.refusal(output(code, 'X1', '1'))).toBe('BL007');
  });
});

// A lot is never its own ancestor.
describe('a circle, straight at the database', () => {
  it('is refused at one step and at several', async () => {
    const first = await cooked(cream);
    const second = await cooked(first.outputs[0]?.lotCode ?? '', '200');
    const third = await cooked(second.outputs[0]?.lotCode ?? '', '100');
    for (const { outputs } of [first, second, third]) {
      const code = outputs[0]?.lotCode ?? '';
      expect(await database.refusal(draw(first.code, code, '1'))).toBe('BL006');
    }
    const free = await cooked(cream);
    const other = draw(third.code, free.outputs[0]?.lotCode ?? '', '1');
    expect(await database.refusal(other)).toBe('BL005');
  });

  it('is refused between batches that are still open', async () => {
    const [one, two] = [await bench.open(kitchen.ganache), await bench.open(kitchen.ganache)];
    const born = [draw(one.code, cream, '10', null), output(one.code, 'X1', '10')] as const;
    const early = [...born, draw(two.code, 'X1', '5', null)] as const;
    expect(await database.refusal(...early)).toBe('BL007');
    expect(await database.refusal(...born, draw(one.code, 'X1', '5', null))).toBe('BL007');
  });

  it('is open to a lot whose way ahead was taken back', async () => {
    const first = await cooked(cream);
    const made = first.outputs[0]?.lotCode ?? '';
    const second = await bench.open(kitchen.ganache);
    await bench.draw(second, { lotCode: cream, quantity: '100' }).expect(201);
    const drawn = await bench
      .draw(second, { lotCode: made, quantity: '50', role: 'rework' })
      .expect(201);
    const back = `/batches/${second.id}/draws/${(drawn.body as { id: string }).id}/reversal`;
    await service.as.maker.post(back, { reason: 'another bowl' }).expect(201);
    const ended = await bench.finish(second, { outputs: [{ quantity: '100' }] }).expect(200);
    const later = (ended.body as BatchBody).outputs[0]?.lotCode;
    await service.as.maker
      .post(`/batches/${first.id}/corrections`, {
        reason: 'it was this bowl',
        reversedDrawIds: [first.draws[0]?.id],
        draws: [
          { lotCode: later, quantity: '100', role: 'rework' },
          { lotCode: cream, quantity: '200' },
        ],
      })
      .expect(201);
  });
});
