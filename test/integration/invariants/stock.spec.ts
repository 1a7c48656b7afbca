import { randomUUID } from 'node:crypto';
import { startTestService, type TestService } from '../../support/service/test-service';
import { BenchHands } from '../../support/workshop/bench';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';
import { StraightAt } from '../../support/workshop/straight-at';

// What is on hand of a lot is the sum of its movements, and never negative, whoever books at once.
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

interface Ledger {
  readonly quantity: string;
  readonly massG: string;
  readonly cost: string;
}

const onHand = (code: string): Promise<Ledger> =>
  database.row<Ledger>(
    `SELECT on_hand_quantity AS quantity, on_hand_mass_g AS "massG", on_hand_cost AS cost
     FROM lot WHERE code = $1`,
    [code],
  );

const summed = (code: string): Promise<Ledger> =>
  database.row<Ledger>(
    `SELECT sum(quantity) AS quantity, sum(m.mass_g) AS "massG", sum(cost) AS cost
     FROM movement m JOIN lot ON lot.id = m.lot_id WHERE code = $1`,
    [code],
  );

describe('many clients at one lot', () => {
  it('draw no more than there is: ten of fourteen get their hundred grams', async () => {
    const code = await kitchen.receive(kitchen.cream, '1000', { price: '3.3333' });
    const batches = await Promise.all(Array.from({ length: 7 }, () => bench.open(kitchen.ganache)));
    const answers = await Promise.all(
      [...batches, ...batches].map((batch) =>
        bench.draw(batch, { lotCode: code, quantity: '100' }),
      ),
    );
    const statuses = answers.map(({ status }) => status).sort();
    expect(statuses).toEqual([...Array<number>(10).fill(201), ...Array<number>(4).fill(409)]);
    const refused = answers.filter(({ status }) => status === 409);
    for (const { body } of refused) {
      expect(body).toMatchObject({ type: '/problems/not-enough-on-hand' });
    }
    expect(await onHand(code)).toEqual({ quantity: '0.000', massG: '0.000', cost: '0.0000' });
    expect(await summed(code)).toEqual(await onHand(code));
  });

  it('draw, put back, waste and dispatch at once, and the ledger still adds up', async () => {
    const code = await kitchen.receive(kitchen.couverture, '1000', { price: '7.7777' });
    const batch = await bench.open(kitchen.ganache);
    const first = await bench.draw(batch, { lotCode: code, quantity: '333.333' }).expect(201);
    const { id } = first.body as { id: string };
    await Promise.all([
      bench.draw(batch, { lotCode: code, quantity: '111.111' }),
      bench.draw(batch, { lotCode: code, quantity: '0.001' }),
      service.as.maker.post(`/batches/${batch.id}/draws/${id}/reversal`, { reason: 'wrong' }),
      service.as.maker.post(`/lots/${code}/adjustments`, {
        kind: 'wasted',
        quantity: '50',
        reason: 'fell down',
      }),
      bench.draw(batch, { lotCode: code, quantity: '900' }),
    ]);
    expect(await summed(code)).toEqual(await onHand(code));
    expect(Number((await onHand(code)).quantity)).toBeGreaterThanOrEqual(0);
  });
});

describe('straight at the database', () => {
  const movement = (kind: string, quantity: string) =>
    [
      `INSERT INTO movement (id, lot_id, quantity, mass_g, cost, kind, user_id)
       SELECT $1, lot.id, $2, $2, 0, $3, user_id FROM lot LIMIT 1`,
      [randomUUID(), quantity, kind],
    ] as const;

  it('what is on hand changes by no other way than a movement', async () => {
    expect(await database.refusal('UPDATE lot SET on_hand_quantity = 5')).toBe('BL002');
  });

  it.each(['received', 'made', 'drawn', 'dispatched'])(
    'a %s movement is written by its own event only',
    async (kind) => {
      const quantity = kind === 'drawn' || kind === 'dispatched' ? '-1' : '1';
      expect(await database.refusal(movement(kind, quantity))).toBe('BL002');
    },
  );

  it('nothing below nought is left, nor weight or cost in an empty lot', async () => {
    expect(await database.refusal(movement('wasted', '-999999'))).toBe('23514');
    const all = `INSERT INTO movement (id, lot_id, quantity, mass_g, cost, kind, user_id)
      SELECT gen_random_uuid(), id, -on_hand_quantity, 0, 0, 'wasted', user_id
      FROM lot WHERE on_hand_mass_g > 0 LIMIT 1`;
    expect(await database.refusal(all)).toBe('23514');
  });

  it('a reversal is the exact opposite of what it names, once', async () => {
    const opposite = (quantity: string) => `INSERT INTO movement
      (id, lot_id, quantity, mass_g, cost, kind, reverses_id, user_id)
      SELECT gen_random_uuid(), lot_id, ${quantity}, -mass_g, -cost, kind, id, user_id
      FROM movement WHERE kind = 'wasted' LIMIT 1`;
    expect(await database.refusal(opposite('-quantity'))).toBeUndefined();
    expect(await database.refusal(opposite('1 - quantity'))).toBe('BL008');
    expect(await database.refusal(opposite('-quantity'), opposite('-quantity'))).toBe('23505');
  });

  it('a lot is not born with goods on hand', async () => {
    const copy = `INSERT INTO lot (id, code, item_id, unit, delivery_line_id, made_quantity, made_mass_g,
        made_cost, on_hand_quantity, made_on, user_id)
      SELECT gen_random_uuid(), 'X', item_id, unit, delivery_line_id, 1, 1, 0, 1, made_on, user_id
      FROM lot LIMIT 1`;
    expect(await database.refusal(copy)).toBe('BL002');
  });
});
