import { randomUUID } from 'node:crypto';
import { request } from 'node:http';
import { PASSWORD, startTestService, type TestService } from '../../support/service/test-service';
import { BenchHands } from '../../support/workshop/bench';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';
import { packPrintable } from '../../support/workshop/printable-box';

jest.setTimeout(120_000);

let service: TestService;
let kitchen: Kitchen;
let bench: BenchHands;

beforeAll(async () => {
  service = await startTestService();
  kitchen = await openKitchen(service);
  bench = new BenchHands(service);
});
afterAll(() => service.close());

const stop = async (key: string): Promise<string> =>
  ((await service.as.maker.delete(`/work/${key}`).expect(200)).body as { outcome: string }).outcome;

interface Step {
  readonly done: number | null;
  readonly total: number | null;
}
const step = async (id: string): Promise<Step> =>
  (await service.as.maker.get(`/work/${id}`).expect(200)).body as Step;

const left = async (code: string): Promise<number> =>
  Number((await bench.lot(code))['onHandQuantity']);

/** Looks again and again until the work says how far it is. */
const underWay = async (id: string): Promise<Step> => {
  for (;;) {
    const now = await step(id);
    if (now.done !== null) return now;
  }
};

describe('a booking that was stopped', () => {
  it('never happens, however late its request arrives', async () => {
    const lotCode = await kitchen.receive(kitchen.cream, '1000');
    const batch = await bench.open(kitchen.ganache);
    const key = randomUUID();
    expect(await stop(key)).toBe('stopped');
    expect(await stop(key)).toBe('stopped');
    const late = await bench.draw(batch, { lotCode, quantity: '100' }, key);
    expect([late.status, (late.body as { type: string }).type]).toEqual([
      409,
      '/problems/work-stopped',
    ]);
    expect(await left(lotCode)).toBe(1000);
  });

  it('is said to have happened when the stop came too late', async () => {
    const lotCode = await kitchen.receive(kitchen.cream, '1000');
    const batch = await bench.open(kitchen.ganache);
    const key = randomUUID();
    await bench.draw(batch, { lotCode, quantity: '100' }, key).expect(201);
    expect(await stop(key)).toBe('booked');
    await bench.draw(batch, { lotCode, quantity: '100' }, key).expect(201);
    expect(await left(lotCode)).toBe(900);
  });

  it('happened or did not, as the answer says, whichever of the two comes first', async () => {
    const lotCode = await kitchen.receive(kitchen.couverture, '1000');
    const batch = await bench.open(kitchen.ganache);
    let booked = 0;
    for (let race = 0; race < 20; race += 1) {
      const key = randomUUID();
      const [drawn, outcome] = await Promise.all([
        bench.draw(batch, { lotCode, quantity: '1' }, key),
        stop(key),
      ]);
      expect(drawn.status).toBe(outcome === 'booked' ? 201 : 409);
      if (outcome === 'booked') booked += 1;
    }
    expect(await left(lotCode)).toBe(1000 - booked);
  });

  it('ends a long run of labels while they are drawn, and none is on record', async () => {
    const code = await packPrintable(service);
    const key = randomUUID();
    const wishes = { form: 'box_label', copies: 2000 };
    const printing = service.as.maker.post(`/lots/${code}/label-runs`, wishes, key);
    const answer = printing.then((one) => one);
    const seen = await underWay(key);
    expect(seen.total).toBe(2000);
    expect(seen.done).toBeLessThan(2000);
    expect(await stop(key)).toBe('stopped');
    expect((await answer).status).toBe(409);
    expect((await service.as.maker.get(`/lots/${code}/label-runs`).expect(200)).body).toEqual([]);
    expect(await step(key)).toEqual({ done: null, total: null });
  });
});

describe('a look whose client goes away', () => {
  it('is under way until then, and no longer', async () => {
    const code = await packPrintable(service);
    const id = randomUUID();
    const { token } = (
      await service.anonymous
        .post('/session', { name: 'The maker', password: PASSWORD, kind: 'script' })
        .expect(201)
    ).body as { token: string };
    const look = request(`${service.origin}/api/lots/${code}/label-previews`, {
      method: 'POST',
      headers: {
        Authorization: `Bearer ${token}`,
        'Content-Type': 'application/json',
        'Work-Id': id,
      },
    });
    look.on('error', () => undefined);
    look.end(JSON.stringify({ form: 'box_label', copies: 2000 }));
    expect((await underWay(id)).total).toBe(2000);
    look.destroy();
    while ((await step(id)).done !== null) continue;
  });
});
