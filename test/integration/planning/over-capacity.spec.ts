import type { PlanView, WayOutView } from '@api/modules/planning/plan.dto';
import { startTestService, type TestService } from '../../support/service/test-service';
import type { Kitchen } from '../../support/workshop/kitchen';
import { pricedKitchen } from '../prices/priced-kitchen';

let service: TestService;
let kitchen: Kitchen;

// Wednesday 25 November 2026; the workshop is closed on Saturday and Sunday.
beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T08:00:00Z'));
  kitchen = await pricedKitchen(service);
  await service.as.maker.post('/moulds', { designId: kitchen.designId, count: 2 }).expect(201);
}, 120_000);
afterAll(() => service.close());

describe('orders far over what the workshop can make', () => {
  it('are answered by a plan that says which go short, by how much and why', async () => {
    const due = ['2026-12-01', '2026-12-02', '2026-12-03', '2026-12-04'];
    for (let index = 0; index < 24; index += 1) {
      await service.as.seller
        .post('/orders', {
          dueOn: due[index % due.length],
          lines: [{ itemId: kitchen.box, quantity: String(5000 + index) }],
        })
        .expect(201);
    }
    const plan = (await service.as.maker.post('/plan').expect(201)).body as PlanView;
    expect(plan.shortfalls).toHaveLength(24);
    for (const { because, missing } of plan.shortfalls) {
      expect(because.length).toBeGreaterThan(0);
      expect(Number(missing)).toBeGreaterThan(4000);
    }
    const asked = Array.from({ length: 24 }, (_, index) => 5000 + index);
    const packed = plan.batches
      .filter(({ step }) => step === 'pack')
      .reduce((total, { quantity }) => total + Number(quantity), 0);
    const missing = plan.shortfalls.reduce((total, short) => total + Number(short.missing), 0);
    expect(packed + missing).toBe(asked.reduce((total, boxes) => total + boxes, 0));
    // Two trays a day are cast at most.
    for (const { step, trays } of plan.batches) {
      if (step === 'cast') expect(trays).toBeLessThanOrEqual(2);
    }

    const ways = (await service.as.auditor.get('/plan/ways-out').expect(200)).body as WayOutView[];
    expect(ways).toContainEqual(
      expect.objectContaining({ kind: 'send_fewer', stillMissing: `${String(missing)}.000` }),
    );
  });
});
