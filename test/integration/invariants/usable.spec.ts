import { randomUUID } from 'node:crypto';
import { startTestService, type TestService } from '../../support/service/test-service';
import { BenchHands, type BatchBody } from '../../support/workshop/bench';
import { addItem, addSpecification, receive } from '../../support/workshop/fixtures';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';
import { StraightAt } from '../../support/workshop/straight-at';

// A held, refused, expired or unspecified lot is not drawn, packed, charged, labelled or sent.
let service: TestService;
let kitchen: Kitchen;
let bench: BenchHands;
let database: StraightAt;
const TODAY = new Date('2026-11-25T09:00:00Z');
const LATER = new Date('2026-12-25T09:00:00Z');

beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(TODAY);
  kitchen = await openKitchen(service);
  bench = new BenchHands(service);
  database = await StraightAt.open(service.databaseUrl);
});
afterAll(async () => {
  await database.close();
  await service.close();
});

const hold = (code: string) =>
  service.as.maker.post(`/lots/${code}/holds`, { reason: 'smells of smoke' }).expect(201);

/** One lot for each thing that can be wrong, with the code of its refusal. */
const wrongLots = async (): Promise<(readonly [code: string, problem: string])[]> => {
  const held = await kitchen.receive(kitchen.couverture, '1000');
  await hold(held);
  const refused = await kitchen.receive(kitchen.couverture, '1000', { refusalReason: 'torn' });
  const expired = await kitchen.receive(kitchen.cream, '1000', { useBy: '2026-12-01' });
  const item = { name: `Nut paste ${randomUUID()}`, kind: 'ingredient' };
  const { id: itemId } = await addItem(service, item);
  const bare = await receive(service, kitchen.supplierId, { itemId, quantity: '1000' });
  return [
    [held, 'lot-held'],
    [refused, 'lot-refused'],
    [expired, 'lot-expired'],
    [bare.lotCode, 'lot-unspecified'],
  ];
};

const finished = async (itemId: string, draws: readonly object[], quantity: string) => {
  const batch = await bench.make(itemId, draws, { outputs: [{ quantity }] });
  return batch.outputs[0]?.lotCode ?? '';
};

describe('a lot that may not be used', () => {
  let wrong: (readonly [code: string, problem: string])[];
  beforeAll(async () => {
    wrong = await wrongLots();
    service.clock.setTo(LATER);
  });
  afterAll(() => {
    service.clock.setTo(TODAY);
  });

  it('is not drawn; the problem names the lot, the reason and the way out', async () => {
    const batch = await bench.open(kitchen.ganache);
    for (const [lotCode, problem] of wrong) {
      const answer = await bench.draw(batch, { lotCode, quantity: '1', role: 'base' });
      expect(answer.status).toBe(409);
      expect(answer.body).toMatchObject({ type: `/problems/${problem}`, facts: { lotCode } });
      const { detail } = answer.body as { detail: string };
      expect(detail).toContain(lotCode);
      expect(detail.split('. ').length).toBeGreaterThan(1);
    }
  });

  it('is not charged into a tank', async () => {
    const body = { name: 'Wheel', itemId: kitchen.couverture, capacityGrams: '9000' };
    const tank = await service.as.maker.post('/tanks', body).expect(201);
    for (const [lotCode, problem] of wrong) {
      const answer = await service.as.maker.post(
        `/tanks/${(tank.body as { id: string }).id}/charges`,
        { lots: [{ lotCode, quantity: '1', rework: true }] },
      );
      expect(answer.body).toMatchObject({ type: `/problems/${problem}`, status: 409 });
    }
  });

  it('is not drawn straight at the database either', async () => {
    const { code } = await bench.open(kitchen.ganache);
    for (const [lotCode] of wrong) {
      const draw = `INSERT INTO draw (id, batch_id, lot_id, role, quantity, mass_g, cost, at, user_id)
        SELECT gen_random_uuid(), batch.id, lot.id, 'base', 1, 1, 0, $3, lot.user_id
        FROM batch, lot WHERE batch.code = $1 AND lot.code = $2`;
      expect(await database.refusal([draw, [code, lotCode, LATER]])).toBe('BL004');
    }
  });

  it('can be thrown away', async () => {
    for (const [lotCode, problem] of wrong) {
      if (problem === 'lot-refused') continue;
      const waste = { kind: 'wasted', quantity: '1', reason: 'no use' };
      await service.as.maker.post(`/lots/${lotCode}/adjustments`, waste).expect(201);
    }
  });
});

describe('a held box', () => {
  it('is neither sent nor labelled, by the service or at the database', async () => {
    const dark = await kitchen.receive(kitchen.couverture, '5000');
    const filling = await finished(kitchen.ganache, [{ lotCode: dark, quantity: '500' }], '500');
    const pieces = await finished(kitchen.piece, [{ lotCode: filling, quantity: '200' }], '20');
    const box = await finished(kitchen.box, [{ lotCode: pieces, quantity: '8' }], '2');
    const held = await finished(kitchen.box, [{ lotCode: pieces, quantity: '8' }], '2');
    await hold(held);
    const send = (lotCode: string) =>
      service.as.seller.post('/dispatches', {
        customerId: null,
        lines: [{ lotCode, quantity: '1' }],
      });
    expect((await send(held)).body).toMatchObject({ type: '/problems/lot-held' });
    const sent = await send(box).expect(201);
    const line = `INSERT INTO dispatch_line (id, dispatch_id, position, lot_id, quantity, mass_g, cost)
      SELECT gen_random_uuid(), $1, 9, id, 1, 1, 0 FROM lot WHERE code = $2`;
    const { id } = sent.body as { id: string };
    expect(await database.refusal([line, [id, held]])).toBe('BL004');
    expect(await database.refusal([label, [held]])).toBe('BL004');
  });

  it('made with a lot that was put on hold meanwhile is on hold as well', async () => {
    const dark = await kitchen.receive(kitchen.couverture, '500');
    const batch = await bench.open(kitchen.ganache);
    await bench.draw(batch, { lotCode: dark, quantity: '500' }).expect(201);
    await hold(dark);
    const ended = await bench.finish(batch, { outputs: [{ quantity: '500' }] }).expect(200);
    const made = (ended.body as BatchBody).outputs[0];
    expect(made?.held).toBe(true);
    const [first] = (await bench.lot(made?.lotCode ?? ''))['holds'] as { reason: string }[];
    expect(first?.reason).toContain(`made with lot ${dark}`);
  });
});

const label = `INSERT INTO label_run (id, lot_id, form, market, languages, copies, content, pdf,
    pdf_sha256, at, user_id)
  SELECT gen_random_uuid(), id, 'box_label', 'EU', '{en}', 1, '{}', '', '', created_at, user_id
  FROM lot WHERE code = $1`;

// Unknown is never absent: a lot with an unknown allergen behind it does not reach a label.
describe('an allergen that is not known', () => {
  it('is refused on a label however far behind it stands', async () => {
    const item = { name: `Praline paste ${randomUUID()}`, kind: 'ingredient' };
    const { id: itemId } = await addItem(service, item);
    await addSpecification(service, itemId, kitchen.supplierId, { hazelnut: 'unknown' });
    const paste = await receive(service, kitchen.supplierId, { itemId, quantity: '1000' });
    const holds = (await bench.lot(paste.lotCode))['holds'] as { id: string }[];
    for (const { id } of holds) {
      const release = { reason: 'the supplier will answer' };
      await service.as.owner.post(`/lots/${paste.lotCode}/holds/${id}/release`, release);
    }
    const acceptance = { allergens: [] };
    const draws = [
      { lotCode: paste.lotCode, quantity: '300', role: 'base', reason: 'a trial', acceptance },
    ];
    const filling = await finished(kitchen.ganache, draws, '300');
    const pieces = await finished(kitchen.piece, [{ lotCode: filling, quantity: '40' }], '4');
    const box = await finished(kitchen.box, [{ lotCode: pieces, quantity: '4' }], '1');
    expect(await database.refusal([label, [box]])).toBe('BL009');
    const dark = await kitchen.receive(kitchen.couverture, '500');
    const clean = await finished(kitchen.ganache, [{ lotCode: dark, quantity: '500' }], '500');
    expect(await database.refusal([label, [clean]])).toBeUndefined();
  });
});
