import type { OrderView } from '@api/modules/orders/orders.dto';
import type { PlanView, StartedBatchesView } from '@api/modules/planning/plan.dto';
import { verifyDatabase } from '@api/platform/verify/verify-database';
import { startTestService, type TestService } from '../../support/service/test-service';
import { BenchHands } from '../../support/workshop/bench';
import type { Kitchen } from '../../support/workshop/kitchen';
import { makeBatch, pricedKitchen } from '../prices/priced-kitchen';

let service: TestService;
let kitchen: Kitchen;
let bench: BenchHands;

interface Shown {
  readonly id: string;
  readonly code: string;
  readonly plannedQuantity: string | null;
  readonly part: { readonly number: number; readonly count: number } | null;
  readonly lines: readonly { readonly plannedQuantity: string; readonly drawnQuantity: string }[];
  readonly parts: { readonly plannedQuantity: string | null; readonly missingQuantity: string };
}

const show = async (id: string): Promise<Shown> =>
  (await service.as.auditor.get(`/batches/${id}`).expect(200)).body as Shown;
const makePlan = async (): Promise<PlanView> =>
  (await service.as.maker.post('/plan').expect(201)).body as PlanView;
const order = async (quantity: string, dueOn: string): Promise<OrderView> =>
  (
    await service.as.seller
      .post('/orders', { dueOn, lines: [{ itemId: kitchen.box, quantity }] })
      .expect(201)
  ).body as OrderView;
const cancel = ({ id, version }: OrderView) =>
  service.as.seller.patch(`/orders/${id}`, version, { state: 'cancelled' }).expect(200);
/** What is to be bought of an item, or is missing of it because it can't be bought in time. */
const lacks = async (itemId: string): Promise<readonly string[]> => {
  const { shopping, shortfalls } = await makePlan();
  return [
    ...shopping.flatMap(({ lines }) => lines.map((line) => [line.itemId, line.needed] as const)),
    ...shortfalls.map((short) => [short.itemId, short.missing] as const),
  ].flatMap(([of, quantity]) => (of === itemId ? [quantity] : []));
};
/** Starts the plan's batch of that step with its lots kept. */
const start = async (plan: PlanView, step: string): Promise<Shown> => {
  const key = plan.batches.find((batch) => batch.step === step)?.key ?? '';
  const started = await service.as.maker
    .post(`/plan/${plan.id}/batches`, { keys: [key], reservedHours: 4 })
    .expect(201);
  return show((started.body as StartedBatchesView).batches[0]?.batchId ?? '');
};

// Wednesday 25 November 2026; the workshop is closed on Saturday and Sunday.
beforeEach(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T08:00:00Z'));
  kitchen = await pricedKitchen(service);
  bench = new BenchHands(service);
  await service.as.maker.post('/moulds', { designId: kitchen.designId, count: 4 }).expect(201);
}, 120_000);
afterEach(async () => {
  expect(await verifyDatabase(service.databaseUrl)).toEqual([]);
  await service.close();
});

describe('a filling that is cooked in two pots', () => {
  it('lacks only what is neither drawn into a pot nor kept for the first of them', async () => {
    // 240 g of ganache for twelve boxes take 115.2 g of cream: all that is there.
    const cream = await kitchen.receive(kitchen.cream, '115.2', { useBy: '2026-12-20' });
    await kitchen.receive(kitchen.couverture, '5000', { bestBefore: '2027-11-01' });
    await kitchen.receive(kitchen.tea, '100', {});
    await order('12', '2026-12-04');
    const head = await start(await makePlan(), 'cook');
    expect(await lacks(kitchen.cream)).toEqual([]);

    const opened = await service.as.maker
      .post(`/batches/${head.id}/parts`, { plannedQuantity: '140' })
      .expect(201);
    const part = opened.body as Shown;
    // The first pot keeps 48 g of need, the other has 67.2 g; both are there.
    expect(await lacks(kitchen.cream)).toEqual([]);

    await bench.draw(part, { lotCode: cream, quantity: '67.2' }).expect(201);
    expect(await lacks(kitchen.cream)).toEqual([]);
    // Without what was kept, the first pot lacks its own 48 g and not the 115.2 g of the whole.
    service.clock.setTo(new Date('2026-11-25T12:30:00Z'));
    await bench.draw(part, { lotCode: cream, quantity: '48' }).expect(201);
    expect(await lacks(kitchen.cream)).toEqual(['48.000']);
  });
});

describe('boxes whose pieces change lot on the way', () => {
  /** Pieces of 11 g each: 6 g of couverture and 5 g of ganache. */
  const pieces = (couverture: string, ganache: string, count: number) =>
    makeBatch(
      service,
      kitchen.piece,
      [
        { lotCode: couverture, quantity: String(6 * count) },
        { lotCode: ganache, quantity: String(5 * count) },
      ],
      { outputs: [{ quantity: String(count) }] },
    );

  it('are parts of one making: each planned for its own boxes, with what was kept for the first', async () => {
    const couverture = await kitchen.receive(kitchen.couverture, '5000', {
      bestBefore: '2027-11-01',
    });
    await kitchen.receive(kitchen.carton, '10');
    const ganache = await makeBatch(
      service,
      kitchen.ganache,
      [{ lotCode: couverture, quantity: '500' }],
      { outputs: [{ quantity: '500' }] },
    );
    await pieces(couverture, ganache, 8);
    await pieces(couverture, ganache, 32);
    const ordered = await order('10', '2026-11-27');
    const head = await start(await makePlan(), 'pack');
    const kept = (await service.as.auditor.get('/reservations?active=true').expect(200))
      .body as readonly { lotCode: string; quantity: string; state: string }[];
    for (const { lotCode, quantity } of kept) {
      await bench.draw(head, { lotCode, quantity }).expect(201);
    }
    const split = await service.as.seller
      .post(`/batches/${head.id}/split`, { boxes: 10 })
      .expect(201);
    const { runs } = split.body as { runs: { batchId: string; boxes: number }[] };
    expect(runs.map(({ boxes }) => boxes)).toEqual([2, 8]);

    const shown = await Promise.all(runs.map(({ batchId }) => show(batchId)));
    expect(shown.map(({ part, plannedQuantity }) => [part, plannedQuantity])).toEqual([
      [{ number: 1, count: 2 }, '2.000'],
      [{ number: 2, count: 2 }, '8.000'],
    ]);
    expect(shown[1]?.parts).toMatchObject({ plannedQuantity: '10.000', missingQuantity: '0.000' });
    for (const { lines } of shown) {
      for (const line of lines) expect(line.drawnQuantity).toBe(line.plannedQuantity);
    }

    // They give ten boxes together: the order is met and one box more is not.
    expect((await makePlan()).batches).toEqual([]);
    await cancel(ordered);
    await order('11', '2026-12-04');
    const more = await makePlan();
    expect(more.batches.filter(({ step }) => step === 'pack')).toMatchObject([
      { quantity: '1.000' },
    ]);
  });

  it('are split again after the first run was finished', async () => {
    const couverture = await kitchen.receive(kitchen.couverture, '5000', {
      bestBefore: '2027-11-01',
    });
    const cartons = await kitchen.receive(kitchen.carton, '10');
    const ganache = await makeBatch(
      service,
      kitchen.ganache,
      [{ lotCode: couverture, quantity: '500' }],
      { outputs: [{ quantity: '500' }] },
    );
    const [first, second, third] = [
      await pieces(couverture, ganache, 8),
      await pieces(couverture, ganache, 8),
      await pieces(couverture, ganache, 8),
    ];
    const head = await bench.open(kitchen.box, { plannedQuantity: '4' });
    for (const [lotCode, quantity] of [
      [first, '8'],
      [second, '8'],
      [cartons, '4'],
    ]) {
      await bench.draw(head, { lotCode, quantity }).expect(201);
    }
    const split = async (id: string, boxes: number) =>
      (
        (await service.as.seller.post(`/batches/${id}/split`, { boxes }).expect(201)).body as {
          runs: { batchId: string }[];
        }
      ).runs.map(({ batchId }) => batchId);
    const [, run = ''] = await split(head.id, 4);
    await bench.finish(head, { outputs: [{ quantity: '2' }] }).expect(200);
    await bench.draw({ id: run }, { lotCode: third, quantity: '8' }).expect(201);
    await bench.draw({ id: run }, { lotCode: cartons, quantity: '2' }).expect(201);
    const [, last = ''] = await split(run, 4);
    expect(await show(last)).toMatchObject({
      part: { number: 3, count: 3 },
      plannedQuantity: '2.000',
      parts: { headId: head.id, plannedQuantity: '4.000' },
    });
  });
});
