import type { OrderView } from '@api/modules/orders/orders.dto';
import type {
  PlanView,
  ReservationView,
  StartedBatchesView,
  WayOutView,
} from '@api/modules/planning/plan.dto';
import type {
  ForecastView,
  PlanningSettingsView,
} from '@api/modules/planning/planning-settings.dto';
import type { Client } from '../../support/service/test-service';
import { startTestService, type TestService } from '../../support/service/test-service';
import type { Kitchen } from '../../support/workshop/kitchen';
import { pricedKitchen } from '../prices/priced-kitchen';

let service: TestService;
let kitchen: Kitchen;
let couverture: string;

const read = async <T>(path: string, by: Client = service.as.auditor): Promise<T> =>
  (await by.get(path).expect(200)).body as T;
const makePlan = async (): Promise<PlanView> =>
  (await service.as.maker.post('/plan').expect(201)).body as PlanView;
const order = async (quantity: string, dueOn: string, more: object = {}): Promise<OrderView> =>
  (
    await service.as.seller
      .post('/orders', { dueOn, lines: [{ itemId: kitchen.box, quantity }], ...more })
      .expect(201)
  ).body as OrderView;
const steps = (plan: PlanView) =>
  plan.batches.map(({ step, day, quantity }) => [step, day, quantity]);
const change = async (settings: Partial<PlanningSettingsView>): Promise<void> => {
  const { version, ...rest } = await read<PlanningSettingsView>('/plan/settings');
  await service.as.maker.put('/plan/settings', version, { ...rest, ...settings }).expect(200);
};

// Wednesday 25 November 2026; the workshop is closed on Saturday and Sunday.
beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T08:00:00Z'));
  kitchen = await pricedKitchen(service);
  await service.as.maker.post('/moulds', { designId: kitchen.designId, count: 2 }).expect(201);
  couverture = await kitchen.receive(kitchen.couverture, '500', {
    price: '6',
    bestBefore: '2027-11-01',
  });
  const term = (itemId: string, body: object) =>
    service.as.maker.put(`/items/${itemId}/supply-term`, 0, {
      supplierId: kitchen.supplierId,
      leadDays: 1,
      packQuantity: null,
      ...body,
    });
  await term(kitchen.cream, { packQuantity: '1000' }).expect(200);
  await term(kitchen.couverture, { packQuantity: '5000', leadDays: 2 }).expect(200);
  await term(kitchen.carton, { packQuantity: '50' }).expect(200);
  await service.as.maker
    .put(`/suppliers/${kitchen.supplierId}/minimum-order`, 0, { amount: '150' })
    .expect(200);
}, 120_000);
afterAll(() => service.close());

describe('orders', () => {
  it('refuses what isn’t sold, half boxes and strangers', async () => {
    const post = (line: object) =>
      service.as.seller.post('/orders', { dueOn: '2026-12-04', lines: [line] });
    expect((await post({ itemId: kitchen.cream, quantity: '1' })).body).toMatchObject({
      type: '/problems/not-for-sale',
    });
    expect((await post({ itemId: kitchen.box, quantity: '1.5' })).body).toMatchObject({
      type: '/problems/pieces-not-whole',
    });
    await service.as.auditor.post('/orders', { dueOn: '2026-12-04', lines: [] }).expect(403);
  });

  it('takes, changes and cancels one, and refuses a stale change', async () => {
    const taken = await order('3', '2026-12-11');
    const changed = await service.as.seller
      .patch(`/orders/${taken.id}`, taken.version, {
        lines: [{ itemId: kitchen.box, quantity: '4' }],
      })
      .expect(200);
    expect(changed.body).toMatchObject({
      state: 'open',
      lines: [{ quantity: '4.000', sentQuantity: '0.000' }],
    });
    await service.as.seller
      .patch(`/orders/${taken.id}`, taken.version, { state: 'done' })
      .expect(412);
    await service.as.seller
      .patch(`/orders/${taken.id}`, taken.version + 1, { state: 'cancelled' })
      .expect(200);
    expect((await read<{ items: OrderView[] }>('/orders?state=open')).items).toEqual([]);
  });
});

describe('a plan from orders', () => {
  let plan: PlanView;

  it('is an empty list before the first is made', async () => {
    expect(await read<object>('/plans')).toEqual({ items: [], next: null });
  });

  it('goes back from twelve boxes on Friday week to what to cook, cast and buy', async () => {
    const { code } = await order('12', '2026-12-04', { minimumLifeDays: 14 });
    plan = await makePlan();
    // 48 pieces are two trays of 24; 240 g of ganache, 288 g and 144 g of couverture.
    expect(steps(plan)).toEqual([
      ['cook', '2026-12-04', '240.000'],
      ['cast', '2026-12-04', '48.000'],
      ['pack', '2026-12-04', '12.000'],
    ]);
    expect(plan.batches[1]).toMatchObject({ trays: 2, for: [code] });
    expect(plan.shortfalls).toEqual([]);
    expect(plan.batches[1]?.uses).toContainEqual(
      expect.objectContaining({ source: 'lot', from: couverture, itemId: kitchen.couverture }),
    );
  });

  it('writes a shopping list in packs, with the last day to order and the minimum order', () => {
    const list = plan.shopping.find(({ supplier }) => supplier !== null);
    expect(list).toMatchObject({ orderBy: '2026-12-03', belowMinimum: '105.8000' });
    const line = (id: string) => list?.lines.find(({ itemId }) => itemId === id);
    // 115.2 g of cream in a pack of 1 kg at 4.20; 12 cartons in a pack of 50 at 0.80.
    expect(line(kitchen.cream)).toMatchObject({
      needed: '115.200',
      packs: 1,
      ordered: '1000.000',
      cost: '4.2000',
    });
    expect(line(kitchen.carton)).toMatchObject({ needed: '12.000', packs: 1, cost: '40.0000' });
    // 432 g of couverture are needed and 500 g are there.
    expect(line(kitchen.couverture)).toBeUndefined();
  });

  it('is kept as it was made, and leaves as a calendar', async () => {
    expect((await read<PlanView>('/plan')).id).toBe(plan.id);
    const { items } = await read<{ items: PlanView[] }>('/plans?limit=1');
    expect(items).toEqual([await read<PlanView>('/plan')]);
    const calendar = await service.as.auditor.get(`/plan/${plan.id}/calendar.ics`).expect(200);
    expect(calendar.headers['content-type']).toContain('text/calendar');
    expect(calendar.text).toContain('BEGIN:VCALENDAR');
    expect(calendar.text.match(/BEGIN:VEVENT/g)?.length).toBe(3 + plan.shopping.length);
    expect(calendar.text).toContain('DTSTART;VALUE=DATE:20261204');
    expect(calendar.text).toMatch(/SUMMARY:Cook .*: .* g/);
    // A link is opened without the headers of the app, so it names the language itself.
    const linked = await service.as.auditor.get(`/plan/${plan.id}/calendar.ics?language=fr`);
    expect(linked.headers['content-language']).toBe('fr');
    expect(linked.text).toMatch(/SUMMARY:Cuire .*\s: .*\sg/);
    expect(linked.text).not.toMatch(/[\u2068\u2069]/);
  });

  it('says to buy from whoever brought it last what nobody wrote terms for', async () => {
    const line = ({ shopping }: PlanView) =>
      shopping
        .flatMap(({ supplier, lines }) => lines.map((one) => ({ supplier, ...one })))
        .find(({ itemId }) => itemId === kitchen.tea);
    expect(line(plan)).toMatchObject({ supplier: null });
    await kitchen.receive(kitchen.tea, '1', { price: '0.03' });
    const { name } = await read<{ name: string }>(`/suppliers/${kitchen.supplierId}`);
    expect(line(await makePlan())).toMatchObject({ supplier: name, packs: null });
  });

  it('says what can’t be met, and prices the ways out', async () => {
    await change({ mouldPrice: '15.00', extraHourPrice: '30.00' });
    await service.as.owner
      .post(`/items/${kitchen.box}/prices`, {
        list: 'counter',
        price: '18.00',
        fromDay: '2026-11-01',
      })
      .expect(201);
    const big = await order('40', '2026-11-27');
    const short = await makePlan();
    // Tea comes in two days, so all is made on Friday: two trays are 48 pieces, 12 boxes of 40.
    expect(short.shortfalls).toMatchObject([
      { for: big.code, missing: '28.000', lostValue: '420.0000' },
    ]);
    expect(short.shortfalls[0]?.because.map(({ kind }) => kind)).toContain('moulds');
    // Seven trays would do it: five more than there are.
    const ways = await read<WayOutView[]>('/plan/ways-out');
    const kinds = ways.map(({ kind }) => kind);
    expect(kinds).toEqual(expect.arrayContaining(['more_moulds', 'deliver_later', 'send_fewer']));
    expect(ways.find(({ kind }) => kind === 'send_fewer')).toMatchObject({ cost: '420.0000' });
    expect(ways.find(({ kind }) => kind === 'more_moulds')).toMatchObject({
      amount: 5,
      cost: '75.0000',
      stillMissing: '0.000',
    });
    await service.as.seller
      .patch(`/orders/${big.id}`, big.version, { state: 'cancelled' })
      .expect(200);
  });

  it('opens batches from it with the lots kept, which nobody else may draw then', async () => {
    const cast = plan.batches.find(({ step }) => step === 'cast');
    const key = cast?.key ?? '';
    const started = (
      await service.as.maker
        .post(`/plan/${plan.id}/batches`, { keys: [key], reservedHours: 4 })
        .expect(201)
    ).body as StartedBatchesView;
    expect(started.batches).toMatchObject([
      {
        key,
        reservations: [{ lotCode: couverture, quantity: '288.000', state: 'active' }],
        notReserved: [{ source: 'planned', itemId: kitchen.ganache }],
      },
    ]);
    const again = await service.as.maker.post(`/plan/${plan.id}/batches`, { keys: [key] });
    expect(again.body).toMatchObject({ status: 409, type: '/problems/already-exists' });

    const other = await service.as.maker.post('/batches', { itemId: kitchen.ganache }).expect(201);
    const draw = (id: string, quantity: string) =>
      service.as.maker.post(`/batches/${id}/draws`, {
        lotCode: couverture,
        quantity,
        role: 'base',
      });
    const otherId = (other.body as { id: string }).id;
    const blocked = await draw(otherId, '213');
    expect(blocked.body).toMatchObject({ status: 409, type: '/problems/lot-reserved' });
    await draw(otherId, '212').expect(201);
    const own = started.batches[0]?.batchId ?? '';
    await service.as.maker
      .post(`/batches/${own}/draws`, { lotCode: couverture, quantity: '100' })
      .expect(201);
    // 188 g are on hand and 188 g are still kept for the cast.
    expect((await draw(otherId, '1')).status).toBe(409);
    service.clock.setTo(new Date('2026-11-25T12:00:01Z'));
    expect(await read<ReservationView[]>('/reservations?active=true')).toEqual([]);
    await draw(otherId, '1').expect(201);
    await service.as.maker
      .post(`/batches/${otherId}/abandon`, { reason: 'only a try' })
      .expect(200);
  });

  it('keeps what has begun when it plans again, and plans anew what was given up', async () => {
    const again = await makePlan();
    const begun = again.batches.find(({ step }) => step === 'pack');
    expect(begun?.uses).toContainEqual(
      expect.objectContaining({ source: 'begun', quantity: '48.000' }),
    );
    expect(again.batches.some(({ step }) => step === 'cast')).toBe(false);
    const open = await read<{ items: { id: string }[] }>('/batches?state=open&kind=cast');
    await service.as.maker
      .post(`/batches/${open.items[0]?.id ?? ''}/abandon`, { reason: 'the shells cracked' })
      .expect(200);
    expect((await makePlan()).batches.some(({ step }) => step === 'cast')).toBe(true);
  });
});

describe('what comes to be known', () => {
  it('forecasts the counter from what it sold, by weekday and season', async () => {
    await change({
      seasons: [{ name: 'feast', fromDay: '2026-12-05', toDay: '2026-12-05', factor: '3' }],
    });
    const forecast = await read<ForecastView>(
      `/items/${kitchen.box}/forecast?fromDay=2026-12-01&days=7`,
    );
    expect(forecast).toMatchObject({ observedDays: 0, thin: true, level: '0.00' });
    expect(forecast.days.map(({ season }) => season).filter(Boolean)).toEqual(['feast']);
  });

  it('counts the store, and the differences are movements', async () => {
    const before = await read<{ onHandQuantity: string }>(`/lots/${couverture}`);
    const counted = (Number(before.onHandQuantity) - 50).toFixed(3);
    const body = {
      counts: [{ lotCode: couverture, countedQuantity: counted }],
      note: 'month’s end',
    };
    const taken = await service.as.maker.post('/stocktakes', body).expect(201);
    expect(taken.body).toMatchObject({
      cost: '-0.6000',
      lines: [{ difference: '-50.000', lotCode: couverture }],
    });
    expect(await read(`/lots/${couverture}`)).toMatchObject({ onHandQuantity: counted });
    const stock = await read<{ value: string; lots: { lotCode: string; quantity: string }[] }>(
      '/stock',
    );
    expect(stock.lots.find(({ lotCode }) => lotCode === couverture)?.quantity).toBe(counted);
    expect((await read<{ items: unknown[] }>('/stocktakes')).items).toHaveLength(1);
    const twice = [...body.counts, ...body.counts];
    await service.as.maker.post('/stocktakes', { counts: twice }).expect(422);
    await service.as.seller.post('/stocktakes', body).expect(403);
    expect(await read(`/items/${kitchen.couverture}/purchases`)).toMatchObject([
      { unitPrice: '12.0000', changePercent: null },
    ]);
  });
});
