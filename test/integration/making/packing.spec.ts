import { startTestService, type TestService } from '../../support/service/test-service';
import { BenchHands, type BatchBody } from '../../support/workshop/bench';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';

let service: TestService;
let kitchen: Kitchen;
let bench: BenchHands;
let couverture: string;
let ganache: string;
let cartons: string;

beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
  kitchen = await openKitchen(service);
  bench = new BenchHands(service);
  couverture = await kitchen.receive(kitchen.couverture, '50000');
  cartons = await kitchen.receive(kitchen.carton, '500', { price: '250' });
  const cooked = await bench.make(kitchen.ganache, [{ lotCode: couverture, quantity: '2000' }], {
    outputs: [{ quantity: '2000' }],
  });
  ganache = cooked.outputs[0]?.lotCode ?? '';
});
afterAll(() => service.close());

/** Pieces of 11 g each: 6 g of chocolate and 5 g of filling. */
const pieces = async (count: number): Promise<string> => {
  const batch = await bench.make(
    kitchen.piece,
    [
      { lotCode: couverture, quantity: String(6 * count) },
      { lotCode: ganache, quantity: String(5 * count) },
    ],
    { outputs: [{ quantity: String(count) }] },
  );
  return batch.outputs[0]?.lotCode ?? '';
};

const packed = async (...draws: readonly [lotCode: string, quantity: string][]) => {
  const batch = await bench.open(kitchen.box);
  for (const [lotCode, quantity] of draws) {
    await bench.draw(batch, { lotCode, quantity }).expect(201);
  }
  return batch;
};

describe('boxes whose pieces changed lot on the way', () => {
  it('are split into a batch for each run, so that no box carries a lot that is not in it', async () => {
    const [first, second] = [await pieces(10), await pieces(30)];
    const batch = await packed([first, '10'], [second, '30'], [cartons, '10']);
    const refused = await bench.finish(batch, { outputs: [{ quantity: '10' }] });
    expect(refused.status).toBe(409);
    expect(refused.body).toMatchObject({
      type: '/problems/split-first',
      facts: { runs: [2, 1, 7] },
    });
    const proposed = await service.as.auditor
      .get(`/batches/${batch.id}/split?boxes=10`)
      .expect(200);
    const runs = [
      { firstBox: 1, lastBox: 2, boxes: 2, lotCodes: [first] },
      { firstBox: 3, lastBox: 3, boxes: 1, lotCodes: [first, second] },
      { firstBox: 4, lastBox: 10, boxes: 7, lotCodes: [second] },
    ];
    expect(proposed.body).toMatchObject({ runs });
    const split = await service.as.seller
      .post(`/batches/${batch.id}/split`, { boxes: 10 })
      .expect(201);
    expect(split.body).toMatchObject({ runs });
    const ids = (split.body as { runs: { batchId: string }[] }).runs.map(({ batchId }) => batchId);
    expect(ids[0]).toBe(batch.id);
    const boxes = [];
    for (const [index, id] of ids.entries()) {
      const quantity = String(runs[index]?.boxes);
      const done = await bench.finish({ id }, { outputs: [{ quantity }] }).expect(200);
      boxes.push(...(done.body as BatchBody).outputs);
    }
    expect(boxes.map(({ massGrams }) => massGrams)).toEqual(['88.000', '44.000', '308.000']);
    expect(await bench.lot(first)).toMatchObject({ onHandQuantity: '0.000' });
    expect(await bench.lot(second)).toMatchObject({ onHandQuantity: '0.000' });
  });

  it('stay together when a person says so', async () => {
    const [first, second] = [await pieces(4), await pieces(4)];
    const batch = await packed([first, '4'], [second, '4'], [cartons, '2']);
    await bench.finish(batch, { outputs: [{ quantity: '2' }], keepTogether: true }).expect(200);
  });

  it('are not split when the pieces do not fill them', async () => {
    const batch = await packed([await pieces(5), '5'], [cartons, '2']);
    const answer = await service.as.seller.post(`/batches/${batch.id}/split`, { boxes: 2 });
    expect(answer.status).toBe(422);
    expect(answer.body).toMatchObject({ type: '/problems/pieces-do-not-fill-boxes' });
  });
});

describe('what is sent', () => {
  it('is a box or a piece, in whole numbers, of what is there', async () => {
    const lot = await pieces(6);
    const send = (lotCode: string, quantity: string) =>
      service.as.seller.post('/dispatches', { customerId: null, lines: [{ lotCode, quantity }] });
    expect((await send(ganache, '100')).body).toMatchObject({ type: '/problems/not-for-sale' });
    expect((await send(lot, '1.5')).body).toMatchObject({ type: '/problems/pieces-not-whole' });
    expect((await send(lot, '7')).body).toMatchObject({
      type: '/problems/not-enough-on-hand',
      facts: { onHand: '6', asked: '7' },
    });
    expect((await send('261125-NONE', '1')).status).toBe(404);
    await send(lot, '6').expect(201);
    await service.as.auditor.post('/dispatches', { lines: [] }).expect(403);
  });

  it('does not go over the counter after its date', async () => {
    const lot = await pieces(2);
    service.clock.setTo(new Date('2027-01-25T09:00:00Z'));
    const late = await service.as.seller.post('/dispatches', {
      customerId: null,
      lines: [{ lotCode: lot, quantity: '1' }],
    });
    service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
    expect(late.status).toBe(409);
    expect(late.body).toMatchObject({ type: '/problems/life-too-short' });
  });

  it('comes back up to what went out, to the shelf or into the bin', async () => {
    const lot = await pieces(7);
    const sent = await service.as.seller
      .post('/dispatches', { customerId: null, lines: [{ lotCode: lot, quantity: '7' }] })
      .expect(201);
    const { id } = sent.body as { id: string };
    const back = (quantity: string, outcome: string) =>
      service.as.seller.post(`/dispatches/${id}/returns`, {
        reason: 'not collected',
        lines: [{ lotCode: lot, quantity, outcome }],
      });
    await back('3', 'restocked').expect(201);
    await back('2', 'wasted').expect(201);
    expect(await bench.lot(lot)).toMatchObject({ onHandQuantity: '3.000' });
    const over = await back('3', 'restocked');
    expect(over.body).toMatchObject({
      type: '/problems/returned-too-much',
      facts: { stillOut: '2', returned: '3' },
    });
    await back('2', 'restocked').expect(201);
    expect(await bench.lot(lot)).toMatchObject({
      onHandQuantity: '5.000',
      onHandMassGrams: '55.000',
    });
  });
});
