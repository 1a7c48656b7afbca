import { verifyDatabase } from '@api/platform/verify/verify-database';
import { startTestService, type TestService } from '../../support/service/test-service';
import { type BatchBody, BenchHands } from '../../support/workshop/bench';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';
import { StraightAt } from '../../support/workshop/straight-at';

let service: TestService;
let kitchen: Kitchen;
let bench: BenchHands;
let database: StraightAt;
let cream: string;
let dark: string;

beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-20T09:00:00Z'));
  kitchen = await openKitchen(service);
  bench = new BenchHands(service);
  database = await StraightAt.open(service.databaseUrl);
  cream = await kitchen.receive(kitchen.cream, '9000', { useBy: '2026-12-20', tempC: '4' });
  dark = await kitchen.receive(kitchen.couverture, '9000', { bestBefore: '2027-11-01' });
});
afterAll(async () => {
  expect(await verifyDatabase(service.databaseUrl)).toEqual([]);
  await database.close();
  await service.close();
});

interface Shown extends BatchBody {
  readonly outputs: readonly (BatchBody['outputs'][number] & {
    readonly id: string;
    readonly onHandQuantity: string;
    readonly takenBackBecause: string | null;
  })[];
  readonly readings: readonly { id: string; value: string; withdrawnBecause: string | null }[];
  readonly readingsDue: readonly { step: string }[];
  readonly balance: { readonly differenceGrams: string; readonly madeGrams: string };
}

const cook = async (grams: string): Promise<Shown> => {
  const draws = [
    { lotCode: cream, quantity: '400' },
    { lotCode: dark, quantity: '600' },
  ];
  const losses =
    grams === '1000' ? [] : [{ kind: 'steam', massGrams: String(1000 - Number(grams)) }];
  const made = await bench.make(kitchen.ganache, draws, { outputs: [{ quantity: grams }], losses });
  return made as Shown;
};
const correct = (batch: { id: string }, body: object) =>
  service.as.maker.post(`/batches/${batch.id}/corrections`, { reason: 'misread', ...body });
const only = (batch: Shown) => {
  const [output] = batch.outputs;
  if (output === undefined) throw new Error('nothing came out');
  return output;
};

describe('an output that was counted wrongly', () => {
  it('is taken back by the opposite entry, and what came out takes its place', async () => {
    const batch = await cook('970');
    const wrong = only(batch);
    service.clock.setTo(new Date('2026-11-23T09:00:00Z'));
    const answer = await correct(batch, {
      reversedOutputIds: [wrong.id],
      reversedLossIds: [(batch as unknown as { losses: { id: string }[] }).losses[0]?.id],
      losses: [{ kind: 'steam', massGrams: '20' }],
      outputs: [{ quantity: '880' }, { role: 'rework', quantity: '100' }],
    }).expect(201);
    const after = answer.body as Shown;
    expect(after.balance).toMatchObject({ differenceGrams: '0.000', madeGrams: '980.000' });
    expect(after.outputs.map(({ takenBackBecause }) => takenBackBecause)).toEqual([
      'misread',
      null,
      null,
    ]);
    const [old, product, rework] = after.outputs;
    expect(old).toMatchObject({ lotCode: wrong.lotCode, onHandQuantity: '0.000' });
    const cost = (of?: { cost: string }) => Number(of?.cost);
    expect(cost(product) + cost(rework)).toBeCloseTo(cost(wrong), 4);
    // Made three days ago: the correction gives it no longer life.
    expect(product?.bestBefore).toBe(wrong.bestBefore);
    const lot = await bench.lot(wrong.lotCode);
    expect(lot).toMatchObject({ onHandQuantity: '0.000', takenBackBecause: 'misread' });
    const moved = await database.rows<{ kind: string; g: string }>(
      `SELECT kind, mass_g::text AS g FROM movement JOIN lot ON lot.id = lot_id
       WHERE code = $1 ORDER BY movement.at`,
      [wrong.lotCode],
    );
    expect(moved.map(({ kind, g }) => `${kind} ${g}`)).toEqual(['made 970.000', 'made -970.000']);
  });

  it('is not counted by trace, balance, cost and events', async () => {
    const batch = await cook('1000');
    const wrong = only(batch);
    const answer = await correct(batch, {
      reversedOutputIds: [wrong.id],
      outputs: [{ quantity: '1000' }],
    }).expect(201);
    const right = (answer.body as Shown).outputs.find((lot) => lot.takenBackBecause === null);
    const ahead = await service.as.auditor.get(`/lots/${dark}/trace?direction=forward`).expect(200);
    const text = JSON.stringify(ahead.body);
    expect(text).toContain(right?.lotCode);
    expect(text).not.toContain(wrong.lotCode);
    const balance = await service.as.auditor.get(`/lots/${dark}/balance`).expect(200);
    expect(JSON.stringify(balance.body)).not.toContain(wrong.lotCode);
    const behind = await service.as.auditor
      .get(`/lots/${right?.lotCode ?? ''}/provenance`)
      .expect(200);
    expect(JSON.stringify(behind.body)).toContain('600');
    service.clock.setTo(new Date('2026-11-23T10:00:00Z'));
    const events = await service.as.owner.get('/exports/events').buffer(true);
    const told = events.text || JSON.stringify(events.body);
    expect(told).toContain(right?.lotCode);
    expect(told).not.toContain(wrong.lotCode);
    // By its own code it is found still, with the way back: a label may be out there.
    const old = await service.as.auditor.get(`/lots/${wrong.lotCode}/trace?direction=back`);
    expect(old.status).toBe(200);
    expect(JSON.stringify(old.body)).toContain(dark);
  });

  it('is refused once some was used, without a replacement, or twice', async () => {
    const batch = await cook('1000');
    const { id, lotCode } = only(batch);
    const piece = await bench.open(kitchen.piece);
    const drawn = await bench.draw(piece, { lotCode, quantity: '120' }).expect(201);
    const whole = { reversedOutputIds: [id], outputs: [{ quantity: '1000' }] };
    expect((await correct(batch, whole)).body).toMatchObject({
      status: 409,
      type: '/problems/output-used',
    });
    const back = `/batches/${piece.id}/draws/${(drawn.body as { id: string }).id}/reversal`;
    await service.as.maker.post(back, { reason: 'wrong bowl' }).expect(201);
    for (const half of [{ reversedOutputIds: [id] }, { outputs: [{ quantity: '1' }] }]) {
      expect((await correct(batch, half)).body).toMatchObject({
        type: '/problems/output-not-replaced',
      });
    }
    const short = { reversedOutputIds: [id], outputs: [{ quantity: '990' }] };
    expect((await correct(batch, short)).body).toMatchObject({
      type: '/problems/batch-does-not-balance',
    });
    await correct(batch, whole).expect(201);
    expect((await correct(batch, whole)).body).toMatchObject({
      type: '/problems/already-reversed',
    });
    const again = await bench.draw(piece, { lotCode, quantity: '1' });
    expect(again.status).toBe(409);
  });

  it('keeps the hold of a person under its new code', async () => {
    const batch = await cook('1000');
    const { id, lotCode } = only(batch);
    await service.as.maker.post(`/lots/${lotCode}/holds`, { reason: 'smells odd' }).expect(201);
    const answer = await correct(batch, {
      reversedOutputIds: [id],
      outputs: [{ quantity: '1000' }],
    }).expect(201);
    const right = (answer.body as Shown).outputs.find((lot) => lot.takenBackBecause === null);
    expect(right?.held).toBe(true);
    const lot = await bench.lot(right?.lotCode ?? '');
    expect(JSON.stringify(lot['holds'])).toContain('smells odd');
  });

  it('straight at the database is refused when it was used, twice, or out of balance', async () => {
    const batch = await cook('1000');
    const { lotCode } = only(batch);
    const takeBack = (code: string, at = 'now()'): string =>
      `UPDATE lot SET taken_back_at = ${at}, taken_back_reason = 'x',
         taken_back_by_id = user_id WHERE code = '${code}'`;
    expect(await database.refusal(takeBack(lotCode))).toBe('BL005');
    const bought = await kitchen.receive(kitchen.couverture, '10');
    expect(await database.refusal(takeBack(bought))).toBe('BL007');
    const waste = `INSERT INTO movement (id, lot_id, quantity, mass_g, cost, kind, reason, at, user_id)
      SELECT gen_random_uuid(), id, -1, -1, 0, 'wasted', 'x', now(), user_id FROM lot
      WHERE code = '${lotCode}'`;
    expect(await database.refusal(waste, takeBack(lotCode))).toBe('BL007');
    expect(
      await database.refusal(takeBack(lotCode), takeBack(lotCode, "now() + '1 s'::interval")),
    ).toBe('BL003');
    const born = `INSERT INTO lot (id, code, item_id, unit, batch_id, output_role, made_quantity,
        made_mass_g, made_cost, made_on, user_id)
      SELECT gen_random_uuid(), 'X-9', item_id, unit, batch_id, 'product', 1, 1, 0, made_on, user_id
      FROM lot WHERE code = '${lotCode}'`;
    expect(await database.refusal(born)).toBe('BL007');
  });
});

describe('a reading that was wrong', () => {
  const read = async (batch: { id: string }, value: string): Promise<string> => {
    const body = { measure: 'temp_c', value, step: 'Boil' };
    const answer = await service.as.maker.post(`/batches/${batch.id}/readings`, body).expect(201);
    return (answer.body as { id: string }).id;
  };
  const withdraw = (batch: { id: string }, id: string) =>
    service.as.maker.post(`/batches/${batch.id}/readings/${id}/withdrawal`, {
      reason: 'the probe was not in the pot',
    });
  const shown = async (batch: { id: string }): Promise<Shown> =>
    (await service.as.auditor.get(`/batches/${batch.id}`).expect(200)).body as Shown;

  it('stays to be seen, its check is due again, and holds what is made until it is read', async () => {
    const batch = await bench.open(kitchen.ganache);
    const low = await read(batch, '60');
    expect((await shown(batch)).readingsDue).toEqual([]);
    const marked = await withdraw(batch, low).expect(201);
    expect(marked.body).toMatchObject({ withdrawnBecause: 'the probe was not in the pot' });
    const now = await shown(batch);
    expect(now.readings).toMatchObject([
      { value: '60', withdrawnBecause: expect.any(String) as string },
    ]);
    expect(now.readingsDue).toMatchObject([{ step: 'Boil' }]);
    await bench.draw(batch, { lotCode: cream, quantity: '400' }).expect(201);
    const held = await bench.finish(batch, { outputs: [{ quantity: '400' }] }).expect(200);
    expect((held.body as Shown).outputs[0]?.held).toBe(true);
    expect((await withdraw(batch, low)).body).toMatchObject({ type: '/problems/already-reversed' });
  });

  it('does not hold once the check was read again within its limits', async () => {
    const batch = await bench.open(kitchen.ganache);
    await withdraw(batch, await read(batch, '60')).expect(201);
    const good = await read(batch, '85');
    await bench.draw(batch, { lotCode: cream, quantity: '100' }).expect(201);
    const free = await bench.finish(batch, { outputs: [{ quantity: '100' }] }).expect(200);
    expect((free.body as Shown).outputs[0]?.held).toBe(false);
    // The good one is found to be wrong too: nothing proves the boiling any more.
    await withdraw(batch, good).expect(201);
    expect((await shown(batch)).outputs[0]?.held).toBe(true);
  });

  it('is said in the diary, beside why', async () => {
    const day = await service.as.auditor.get('/diary?from=2026-11-23&to=2026-11-23').expect(200);
    expect(JSON.stringify(day.body)).toContain('marked as wrong: the probe was not in the pot');
  });

  it('can’t be deleted, and the mark can’t be taken off', async () => {
    expect(await database.refusal('DELETE FROM reading_withdrawal')).toBe('BL001');
    expect(await database.refusal(`UPDATE mould_use_withdrawal SET reason = 'y'`)).not.toBe(
      'BL005',
    );
  });
});

describe('the use of a mould that was not', () => {
  it('is taken back with a reason; the mould is free, and no scope names it', async () => {
    const mould = await service.as.maker
      .post('/moulds', { designId: kitchen.designId, count: 1 })
      .expect(201);
    const tag = /"tag":"([^"]+)"/.exec(JSON.stringify(mould.body))?.[1] ?? '';
    const batch = await bench.open(kitchen.piece);
    const use = { mouldTag: tag, cavitiesFilled: 24 };
    const used = await service.as.maker.post(`/batches/${batch.id}/mould-uses`, use).expect(201);
    const path = `/batches/${batch.id}/mould-uses/${(used.body as { id: string }).id}/withdrawal`;
    const other = await bench.open(kitchen.piece);
    const taken = () => service.as.maker.post(`/batches/${other.id}/mould-uses`, use);
    expect((await taken()).body).toMatchObject({ type: '/problems/mould-in-use' });
    expect((await service.as.seller.post(path, { reason: 'x' })).status).toBe(403);
    const back = await service.as.maker.post(path, { reason: 'the next tray' }).expect(201);
    expect(back.body).toMatchObject({ withdrawnBecause: 'the next tray', cavitiesFilled: 24 });
    expect((await service.as.maker.post(path, { reason: 'again' })).status).toBe(409);
    await taken().expect(201);
    const seen = await service.as.auditor.get(`/moulds/${tag}`).expect(200);
    const uses = (seen.body as { uses: { batchId: string }[] }).uses.map(({ batchId }) => batchId);
    expect(uses).toEqual([other.id]);
  });
});
