import type { OrderView } from '@api/modules/orders/orders.dto';
import type { PlanView } from '@api/modules/planning/plan.dto';
import type {
  ForecastView,
  PlanningSettingsView,
} from '@api/modules/planning/planning-settings.dto';
import { startTestService, type TestService } from '../../support/service/test-service';
import type { Kitchen } from '../../support/workshop/kitchen';
import { makeBatch, pricedKitchen } from '../prices/priced-kitchen';

let service: TestService;
let kitchen: Kitchen;
let boxes: string;
let hotel: string;

const read = async <T>(path: string): Promise<T> =>
  (await service.as.auditor.get(path).expect(200)).body as T;
const send = (quantity: string, more: object = {}) =>
  service.as.seller.post('/dispatches', {
    customerId: hotel,
    lines: [{ lotCode: boxes, quantity }],
    ...more,
  });
const detailOf = ({ body }: { readonly body: unknown }) => (body as { detail: string }).detail;
const on = (day: string): void => service.clock.setTo(new Date(`${day}T09:00:00Z`));

/** Casts and packs boxes of four; they last 30 days. */
const packBoxes = async (count: number): Promise<string> => {
  const couverture = await kitchen.receive(kitchen.couverture, '5000', {
    bestBefore: '2028-01-01',
  });
  const carton = await kitchen.receive(kitchen.carton, String(count));
  const pieces = await makeBatch(
    service,
    kitchen.piece,
    [{ lotCode: couverture, quantity: String(count * 44) }],
    { outputs: [{ quantity: String(count * 4) }] },
  );
  return makeBatch(
    service,
    kitchen.box,
    [
      { lotCode: pieces, quantity: String(count * 4) },
      { lotCode: carton, quantity: String(count) },
    ],
    { outputs: [{ quantity: String(count) }] },
  );
};

// Monday 2 November 2026.
beforeAll(async () => {
  service = await startTestService();
  on('2026-11-02');
  kitchen = await pricedKitchen(service);
  boxes = await packBoxes(60);
  const customer = await service.as.seller.post('/customers', { name: 'Inn at the Lock' });
  hotel = (customer.body as { id: string }).id;
}, 120_000);
afterAll(() => service.close());

describe('an order', () => {
  let order: OrderView;
  const again = () => read<OrderView>(`/orders/${order.id}`);

  it('counts what was sent for it, and is done when all of it was', async () => {
    const taken = await service.as.seller
      .post('/orders', {
        customerId: hotel,
        dueOn: '2026-11-03',
        lines: [{ itemId: kitchen.box, quantity: '8' }],
      })
      .expect(201);
    order = taken.body as OrderView;
    await send('5', { orderId: order.id }).expect(201);
    expect(await again()).toMatchObject({ state: 'open', lines: [{ sentQuantity: '5.000' }] });
    await send('3', { orderId: order.id }).expect(201);
    expect(await again()).toMatchObject({ state: 'done', lines: [{ sentQuantity: '8.000' }] });
  });

  it('is not sent again when it is done, nor to somebody else', async () => {
    const done = await send('1', { orderId: order.id });
    expect(done.status).toBe(422);
    expect(detailOf(done)).toContain('is done');
    const open = (await again()).version;
    await service.as.seller.patch(`/orders/${order.id}`, open, { state: 'open' }).expect(200);
    const elsewhere = await send('1', { orderId: order.id, customerId: null });
    expect(detailOf(elsewhere)).toContain('somebody else');
    expect(await read(`/lots/${boxes}`)).toMatchObject({ onHandQuantity: '52.000' });
    await service.as.seller
      .patch(`/orders/${order.id}`, open + 1, { state: 'cancelled' })
      .expect(200);
  });
});

describe('what the counter sells', () => {
  it('is forecast by its weekdays, and the plan makes what the forecast expects', async () => {
    // Four weeks of two boxes on each Friday and six on each Saturday, common practice, no source.
    for (const week of [0, 1, 2, 3]) {
      for (const [day, quantity] of [
        [6, '2'],
        [7, '6'],
      ] as const) {
        on(`2026-11-${String(day + week * 7).padStart(2, '0')}`);
        await send(quantity, { customerId: null }).expect(201);
      }
    }
    on('2026-11-30');
    const path = `/items/${kitchen.box}/forecast?fromDay=2026-12-01&days=7`;
    const { version, ...settings } = await read<PlanningSettingsView>('/plan/settings');
    const change = (seen: number, part: Partial<PlanningSettingsView>) =>
      service.as.maker.put('/plan/settings', seen, { ...settings, ...part }).expect(200);
    await change(version, { counterWeekdays: [5, 6] });
    const forecast = await read<ForecastView>(path);
    expect(forecast).toMatchObject({ observedDays: 8, level: '4.00' });
    expect(forecast.days.filter(({ expected }) => Number(expected) > 0)).toMatchObject([
      { day: '2026-12-04', expected: '2.00' },
      { day: '2026-12-05', expected: '6.00' },
    ]);

    const plan = async (): Promise<PlanView> =>
      (await service.as.maker.post('/plan').expect(201)).body as PlanView;
    expect((await plan()).batches).toEqual([]);
    // Six weeks expect 48 boxes. Of the first 60 there are 20 left, but they end on 2 December.
    expect(await read(`/lots/${boxes}`)).toMatchObject({
      onHandQuantity: '20.000',
      bestBefore: '2026-12-02',
    });
    await packBoxes(12);
    await change(version + 1, { counterWeekdays: [5, 6], forecastDays: 42, horizonDays: 60 });
    await service.as.maker.post('/moulds', { designId: kitchen.designId, count: 6 }).expect(201);
    const packed = (await plan()).batches.filter(({ step }) => step === 'pack');
    const sum = packed.reduce((total, { quantity }) => total + Number(quantity), 0);
    // Twelve fresh ones last until 30 December.
    expect(sum).toBe(36);
    expect(packed.every((batch) => batch.for.includes('counter'))).toBe(true);
    expect(packed.every(({ day }) => day >= '2026-12-04')).toBe(true);
  });
});
