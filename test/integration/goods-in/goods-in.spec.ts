import { randomUUID } from 'node:crypto';
import { startTestService, type TestService } from '../../support/service/test-service';
import { addItem, addSpecification, addSupplier, receive } from '../../support/workshop/fixtures';

let service: TestService;
let supplierId: string;
let creamId: string;

beforeAll(async () => {
  service = await startTestService();
  supplierId = (await addSupplier(service)).id;
  const cream = { name: 'Cream 35 %', kind: 'ingredient', perishable: true, warmestTempC: '6.0' };
  creamId = (await addItem(service, cream)).id;
});
afterAll(() => service.close());

const cream = { quantity: '5000.000', price: '21.00', tempC: '4.2', useBy: '2099-01-01' };

const lot = async (code: string): Promise<Record<string, unknown>> =>
  (await service.as.auditor.get(`/lots/${code}`).expect(200)).body as Record<string, unknown>;

describe('a delivery line without an approved specification', () => {
  it('is on hold by itself until one is approved and pinned', async () => {
    const line = await receive(service, supplierId, { itemId: creamId, ...cream });
    expect(line.heldBecause).toContain('no approved specification');
    const held = await lot(line.lotCode);
    expect(held).toMatchObject({ onHold: true, onHandQuantity: '5000.000', specificationId: null });
    const [hold] = held['holds'] as { id: string }[];
    const release = `/lots/${line.lotCode}/holds/${hold?.id ?? ''}/release`;
    const refused = await service.as.owner.post(release, { reason: 'I know this cream' });
    expect(refused.status).toBe(409);
    expect(refused.body).toMatchObject({ type: '/problems/lot-unspecified' });
    const specificationId = await addSpecification(service, creamId, supplierId);
    await service.as.owner
      .post(`/lots/${line.lotCode}/specification`, { specificationId, reason: 'approved today' })
      .expect(201);
    await service.as.maker.post(release, { reason: 'ok' }).expect(403);
    await service.as.owner.post(release, { reason: 'specification approved' }).expect(201);
    expect(await lot(line.lotCode)).toMatchObject({ onHold: false, specificationId });
  });
});

describe('a delivery', () => {
  beforeAll(() => addSpecification(service, creamId, supplierId, { milk: 'contains' }));

  it('makes one lot a line, with the value, date and temperature that were read', async () => {
    const line = await receive(service, supplierId, { itemId: creamId, ...cream });
    expect(line.heldBecause).toBeNull();
    expect(await lot(line.lotCode)).toMatchObject({
      onHandMassGrams: '5000.000',
      onHandCost: '21.0000',
      useBy: '2099-01-01',
      supplierLotCode: 'S-1',
    });
    const movements = await service.as.auditor.get(`/lots/${line.lotCode}/movements`).expect(200);
    expect(movements.body).toMatchObject([{ kind: 'received', quantity: '5000.000' }]);
  });

  it('holds goods that arrive too warm, and records nothing on hand for a refused line', async () => {
    const warm = await receive(service, supplierId, { itemId: creamId, ...cream, tempC: '8.4' });
    expect(warm.heldBecause).toContain('8.4 °C');
    const refused = await receive(service, supplierId, {
      itemId: creamId,
      ...cream,
      refusalReason: 'carton burst',
    });
    expect(await lot(refused.lotCode)).toMatchObject({ refused: true, onHandQuantity: '0.000' });
  });

  it('books nothing of a delivery when one line is against a rule', async () => {
    const before = await service.as.maker.get('/deliveries').expect(200);
    const answer = await service.as.maker.post('/deliveries', {
      supplierId,
      lines: [
        { itemId: creamId, supplierLotCode: 'A', ...cream },
        { itemId: creamId, supplierLotCode: 'B', ...cream, useBy: '2020-01-01' },
      ],
    });
    expect(answer.status).toBe(422);
    expect(answer.body).toMatchObject({
      type: '/problems/goods-past-use-by',
      facts: { supplierLotCode: 'B', useBy: '2020-01-01' },
    });
    const after = await service.as.maker.get('/deliveries').expect(200);
    expect(after.body).toEqual(before.body);
  });

  it('names each wrong field by its pointer', async () => {
    const answer = await service.as.maker.post('/deliveries', {
      supplierId,
      lines: [{ itemId: creamId, supplierLotCode: 'A', quantity: 5, price: '1,50' }],
    });
    expect(answer.status).toBe(400);
    const pointers = (answer.body as { errors: { pointer: string }[] }).errors.map(
      (error) => error.pointer,
    );
    expect(pointers).toEqual(['/lines/0/quantity', '/lines/0/price']);
  });

  it('is booked once however often it is sent under one key', async () => {
    const key = randomUUID();
    const body = { supplierId, lines: [{ itemId: creamId, supplierLotCode: 'ONCE', ...cream }] };
    const answers = await Promise.all(
      [1, 2, 3, 4].map(() => service.as.maker.post('/deliveries', body, key)),
    );
    expect(answers.map((answer) => answer.status)).toEqual([201, 201, 201, 201]);
    for (const answer of answers) expect(answer.body).toEqual(answers[0]?.body);
    const other = await service.as.maker.post('/deliveries', { ...body, note: 'x' }, key);
    expect(other.status).toBe(422);
  });
});

describe('adjusting a lot', () => {
  it('books waste, samples and counts, and puts one right by its opposite', async () => {
    const { lotCode } = await receive(service, supplierId, { itemId: creamId, ...cream });
    const adjust = (kind: string, quantity: string) =>
      service.as.maker.post(`/lots/${lotCode}/adjustments`, { kind, quantity, reason: 'test' });
    await adjust('wasted', '200').expect(201);
    await adjust('sampled', '50.5').expect(201);
    const counted = await adjust('counted', '4700').expect(201);
    expect(counted.body).toMatchObject({ onHandQuantity: '4700.000' });
    const tooMuch = await adjust('wasted', '4700.001');
    expect(tooMuch.status).toBe(409);
    expect(tooMuch.body).toMatchObject({ type: '/problems/not-enough-on-hand' });
    const rows = (await service.as.maker.get(`/lots/${lotCode}/movements`)).body as {
      id: string;
      kind: string;
    }[];
    const waste = rows.find((row) => row.kind === 'wasted')?.id ?? '';
    const reverse = () =>
      service.as.maker.post(`/lots/${lotCode}/adjustments/${waste}/reversal`, {
        reason: 'mistake',
      });
    expect((await reverse().expect(201)).body).toMatchObject({ onHandQuantity: '4900.000' });
    await reverse().expect(409);
  });

  it('moves a lot and finds it by place, state and date', async () => {
    const place = await service.as.maker.post('/places', { name: 'Cold room', kind: 'fridge' });
    const placeId = (place.body as { id: string }).id;
    const { lotCode } = await receive(service, supplierId, { itemId: creamId, ...cream });
    await service.as.maker.post(`/lots/${lotCode}/place`, { placeId }).expect(201);
    await service.as.maker.post(`/lots/${lotCode}/holds`, { reason: 'smells odd' }).expect(201);
    const query = `place=${placeId}&state=on_hold&expiring-before=2100-01-01`;
    const list = await service.as.maker.get(`/lots?${query}`).expect(200);
    expect((list.body as { items: { code: string }[] }).items.map((row) => row.code)).toEqual([
      lotCode,
    ]);
  });
});
