import { startTestService, type TestService } from '../../support/service/test-service';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';

interface Batch {
  readonly id: string;
  readonly code: string;
  readonly outputs: readonly {
    readonly lotCode: string;
    readonly quantity: string;
    readonly massGrams: string;
    readonly cost: string;
    readonly bestBefore: string | null;
    readonly held: boolean;
  }[];
}

let service: TestService;
let kitchen: Kitchen;
beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
  kitchen = await openKitchen(service);
});
afterAll(() => service.close());

const open = async (body: object): Promise<Batch> =>
  (await service.as.maker.post('/batches', body).expect(201)).body as Batch;
const draw = (batch: Batch, body: object) =>
  service.as.maker.post(`/batches/${batch.id}/draws`, body);
const finish = (batch: Batch, body: object) =>
  service.as.maker.post(`/batches/${batch.id}/finish`, body);
const lot = async (code: string) =>
  (await service.as.auditor.get(`/lots/${code}`).expect(200)).body as Record<string, unknown>;

describe('a day from goods in to dispatch', () => {
  let cream: string;
  let couverture: string;
  let tankId: string;
  let tankLot: string;
  let ganache: string;
  let pieces: string;
  let boxes: string;

  it('charges a tank, and tops it up with its heel', async () => {
    cream = await kitchen.receive(kitchen.cream, '2000', { price: '9', useBy: '2026-12-05' });
    couverture = await kitchen.receive(kitchen.couverture, '10000', {
      price: '120',
      bestBefore: '2027-11-01',
    });
    const tank = await service.as.maker
      .post('/tanks', { name: 'Dark wheel', itemId: kitchen.couverture, capacityGrams: '6000' })
      .expect(201);
    tankId = (tank.body as { id: string }).id;
    const charge = (quantity: string) =>
      service.as.maker.post(`/tanks/${tankId}/charges`, {
        lots: [{ lotCode: couverture, quantity }],
      });
    const first = await charge('2000').expect(201);
    expect(first.body).toMatchObject({ heelGrams: '0.000', addedGrams: '2000.000' });
    const second = await charge('3000').expect(201);
    expect(second.body).toMatchObject({ heelGrams: '2000.000', addedGrams: '3000.000' });
    const over = await charge('1000.001');
    expect(over.status).toBe(409);
    expect(over.body).toMatchObject({
      type: '/problems/tank-overfull',
      facts: { overGrams: '0.001' },
    });
    tankLot = (second.body as { lotCode: string }).lotCode;
    expect(await lot(tankLot)).toMatchObject({
      onHandMassGrams: '5000.000',
      onHandCost: '60.0000',
      bestBefore: '2027-11-01',
    });
    expect(await lot((first.body as { lotCode: string }).lotCode)).toMatchObject({
      onHandQuantity: '0.000',
    });
  });

  it('cooks a filling whose losses are named and whose date is explained', async () => {
    const tea = await kitchen.receive(kitchen.tea, '500', { price: '30' });
    const batch = await open({ itemId: kitchen.ganache, plannedQuantity: '1000' });
    expect(batch).toMatchObject({
      kind: 'cook',
      lines: [
        { plannedQuantity: '480.000', proposedLots: [{ lotCode: cream, date: '2026-12-05' }] },
        { plannedQuantity: '20.000' },
        { plannedQuantity: '600.000' },
      ],
      readingsDue: [{ step: 'Boil', measure: 'temp_c', low: '82', high: '95' }],
    });
    await draw(batch, { lotCode: cream, quantity: '480' }).expect(201);
    await draw(batch, { lotCode: tea, quantity: '20' }).expect(201);
    const fromTank = await draw(batch, { tankId, quantity: '600', role: 'base' }).expect(201);
    expect(fromTank.body).toMatchObject({ lotCode: tankLot, cost: '7.2000' });
    const reading = await service.as.maker
      .post(`/batches/${batch.id}/readings`, { measure: 'temp_c', step: 'Boil', value: '84.5' })
      .expect(201);
    expect(reading.body).toMatchObject({ verdict: 'in', low: '82', high: '95' });
    await service.as.maker
      .post(`/batches/${batch.id}/losses`, { kind: 'steam', massGrams: '15' })
      .expect(201);
    const missing = await finish(batch, { outputs: [{ quantity: '1000' }] });
    expect(missing.status).toBe(422);
    expect(missing.body).toMatchObject({
      type: '/problems/batch-does-not-balance',
      facts: { differenceGrams: '85' },
    });
    const finished = await finish(batch, {
      outputs: [{ quantity: '1000' }],
      losses: [
        { kind: 'held_back', massGrams: '60', lotCode: tea },
        { kind: 'scrapings', massGrams: '25' },
      ],
      labourMinutes: '35',
    }).expect(200);
    const made = (finished.body as Batch).outputs;
    // 480 g of 9.00 for 2,000 g, 20 g of 30.00 for 500 g, and 7.20 from the tank.
    expect(made).toMatchObject([{ massGrams: '1000.000', cost: '10.5600', held: false }]);
    expect(made).toMatchObject([{ bestBefore: '2026-12-05' }]);
    expect(finished.body).toMatchObject({ balance: { differenceGrams: '0.000' } });
    ganache = made[0]?.lotCode ?? '';
  });

  it('casts pieces in a sound tray and weighs them by the balance', async () => {
    const trays = await service.as.maker
      .post('/moulds', { designId: kitchen.designId, count: 2 })
      .expect(201);
    const [tray] = (trays.body as { items: { tag: string }[] }).items;
    const batch = await open({ itemId: kitchen.piece, plannedTrays: 1 });
    expect(batch).toMatchObject({ kind: 'cast', plannedTrays: 1, plannedQuantity: '24.000' });
    await draw(batch, { tankId, quantity: '144' }).expect(201);
    await draw(batch, { lotCode: ganache, quantity: '120' }).expect(201);
    await service.as.maker
      .post(`/batches/${batch.id}/mould-uses`, {
        mouldTag: tray?.tag,
        cavitiesFilled: 24,
        rejectCavities: [3, 7],
      })
      .expect(201);
    const finished = await finish(batch, {
      outputs: [{ quantity: '22' }],
      losses: [{ kind: 'rejects', pieces: 2 }],
    }).expect(200);
    expect(finished.body).toMatchObject({
      outputs: [{ quantity: '22.000', massGrams: '242.000', bestBefore: '2026-12-05' }],
      losses: [{ kind: 'rejects', massGrams: '22.000' }],
    });
    // 144 g at 12.00 per kg and 120 g of 10.56 for 1,000 g: the rejects are paid by the good ones.
    expect((finished.body as Batch).outputs[0]?.cost).toBe('2.9952');
    pieces = (finished.body as Batch).outputs[0]?.lotCode ?? '';
  });

  it('packs boxes, by a seller, with the carton’s cost and no weight of it', async () => {
    const cartons = await kitchen.receive(kitchen.carton, '50', { price: '25' });
    const refused = await service.as.seller.post('/batches', { itemId: kitchen.ganache });
    expect(refused.status).toBe(403);
    const opened = await service.as.seller
      .post('/batches', { itemId: kitchen.box, plannedQuantity: '5' })
      .expect(201);
    const batch = opened.body as Batch;
    await draw(batch, { lotCode: pieces, quantity: '20' }).expect(201);
    await draw(batch, { lotCode: cartons, quantity: '5' }).expect(201);
    const finished = await finish(batch, { outputs: [{ quantity: '5' }] }).expect(200);
    expect((finished.body as Batch).outputs).toMatchObject([
      { quantity: '5.000', massGrams: '220.000', cost: '5.2229', bestBefore: '2026-12-05' },
    ]);
    boxes = (finished.body as Batch).outputs[0]?.lotCode ?? '';
  });

  it('sends boxes to a customer who gets the life that was agreed', async () => {
    const made = await service.as.owner
      .post('/customers', { name: 'Hotel of the Two Invented Bridges', minimumLifeDays: 14 })
      .expect(201);
    const customerId = (made.body as { id: string }).id;
    const lines = [{ lotCode: boxes, quantity: '2' }];
    const short = await service.as.seller.post('/dispatches', { customerId, lines });
    expect(short.status).toBe(409);
    expect(short.body).toMatchObject({
      type: '/problems/life-too-short',
      facts: { daysLeft: 10, minimumLifeDays: 14 },
    });
    const sent = await service.as.seller
      .post('/dispatches', { customerId, lines, shortLifeReason: 'for tonight’s guests' })
      .expect(201);
    expect(sent.body).toMatchObject({
      customerName: 'Hotel of the Two Invented Bridges',
      lines: [{ lotCode: boxes, quantity: '2.000', massGrams: '88.000' }],
    });
    await service.as.seller.post('/dispatches', { customerId: null, lines }).expect(201);
    const sales = await service.as.auditor
      .get('/dispatches/counter-sales?from=2026-11-25&to=2026-11-25')
      .expect(200);
    expect(sales.body).toMatchObject({ items: [{ day: '2026-11-25', quantity: '2.000' }] });
    const back = await service.as.seller
      .post(`/dispatches/${(sent.body as { id: string }).id}/returns`, {
        reason: 'guests left',
        lines: [{ lotCode: boxes, quantity: '1', outcome: 'restocked' }],
      })
      .expect(201);
    expect(back.body).toMatchObject({ lines: [{ returnedQuantity: '1.000' }] });
    expect(await lot(boxes)).toMatchObject({ onHandQuantity: '2.000', onHandMassGrams: '88.000' });
  });
});
